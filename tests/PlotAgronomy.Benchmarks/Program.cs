using BenchmarkDotNet.Running;
using PlotAgronomy.Benchmarks;

if (args is ["ratios"])
{
    Ratios.Print();
}
else
{
    BenchmarkSwitcher.FromAssembly(typeof(ColumnBenchmarks).Assembly).Run(args);
}
