using BenchmarkDotNet.Running;
using Estimator.Benchmarks;

if (args is ["pages"])
{
    await PageMeasuring.RunAsync();
    return;
}

BenchmarkSwitcher.FromAssembly(typeof(TakeoffBenchmarks).Assembly).Run(args.Length > 0 ? args : ["--filter", "*"], new InOneProcess());
