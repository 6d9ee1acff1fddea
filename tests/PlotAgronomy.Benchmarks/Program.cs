using BenchmarkDotNet.Running;
using PlotAgronomy.Benchmarks;

if (args is ["ratios"])
{
    Ratios.Print();
}
else if (args is ["solver"])
{
    SolverTimes.Print();
}
else if (args is ["growth", .. var words])
{
    Growth.Print(words);
}
else
{
    BenchmarkSwitcher.FromAssembly(typeof(ColumnBenchmarks).Assembly).Run(args);
}
