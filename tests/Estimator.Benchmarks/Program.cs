using BenchmarkDotNet.Running;
using Estimator.Benchmarks;

BenchmarkSwitcher.FromAssembly(typeof(TakeoffBenchmarks).Assembly).Run(args.Length > 0 ? args : ["--filter", "*"], new InOneProcess());
