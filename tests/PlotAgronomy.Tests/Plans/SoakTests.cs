using PlotAgronomy.Tests.Packaging;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Plans;

/// <summary>Plans solved one after another in a process of their own, the small form of <c>.ci/soak</c>.</summary>
public class SoakTests
{
    private static readonly string Program = Repository.PathOf(
        $"tests/PlotAgronomy.Record/bin/{new DirectoryInfo(AppContext.BaseDirectory).Parent!.Name}/net10.0/PlotAgronomy.Record.dll");

    [Fact]
    public void Two_threads_answer_as_one_and_the_heap_does_not_grow()
    {
        var (exit, output) = DotnetCommand.Run(Repository.Root, Program, "soak", "300");
        Assert.True(exit == 0, output);
        Assert.Contains("300 plans, 300 different answers, 0 answered otherwise", output, StringComparison.Ordinal);
    }
}
