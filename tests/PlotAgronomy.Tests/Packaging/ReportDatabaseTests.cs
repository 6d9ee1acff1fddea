using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Packaging;

/// <summary>The sample that limes soil tests inside an embedded database: an engine of its own sums what the kernels answer.</summary>
public class ReportDatabaseTests
{
    [Fact, Trait("Category", "Slow")]
    public void The_database_and_the_column_say_the_same()
    {
        string[] command = ["run", "--no-build", "--project", "samples/PlotAgronomy.ReportDatabase", "--", "20000"];
        (int exitCode, string said) = DotnetCommand.Run(Repository.Root, command);
        Assert.True(exitCode == 0, said);
        Assert.Contains("20,000 reports: Oregon EM 9585, Sikora buffer, to pH 6.4", said, StringComparison.Ordinal);
        Assert.EndsWith("both say the same", said.Trim(), StringComparison.Ordinal);
    }
}
