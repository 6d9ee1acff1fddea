using BenchmarkDotNet.Running;
using PlotAgronomy.Benchmarks;
using PlotAgronomy.Benchmarks.Rooms;

if (args is ["ratios"])
{
    Ratios.Print();
}
else if (args is ["rooms", .. var rooms])
{
    RoomTimes.Print(rooms);
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
