using BenchmarkDotNet.Running;
using Estimator.Benchmarks;

if (args is ["pages"])
{
    await PageMeasuring.RunAsync();
    return 0;
}

if (args is ["prices", .. var files])
{
    return await PriceFileMeasuring.RunAsync(files);
}

if (args is ["cutting", .. var arguments])
{
    return CuttingMeasuring.Run(arguments);
}

BenchmarkSwitcher.FromAssembly(typeof(TakeoffBenchmarks).Assembly).Run(args.Length > 0 ? args : ["--filter", "*"], new InOneProcess());
return 0;
