using PlotAgronomy.Records;

namespace PlotAgronomy.Tests.SampleConsole;

/// <summary>The demo book: an invented owner, four plots, five years.</summary>
public class DemoBookTests
{
    private const int MostWords = 450;

    private static string Folder => ConsoleTests.Data("demo-book");

    private static string Report()
    {
        var (exit, report, error) = ConsoleTests.Run("history", "--book", Folder, "--width", "100");
        Assert.Equal((0, ""), (exit, error));
        return report;
    }

    [Fact]
    public void It_holds_four_plots_and_five_years_and_says_that_it_is_a_demo()
    {
        var book = PlotBookFolder.Open(Folder, "reader").Read();
        Assert.Empty(book.Findings);
        Assert.Equal(["Cedar Corner", "Long Strip", "Mill Slope", "Pond Field"], book.Plots);
        Assert.Equal([2021, 2022, 2023, 2024, 2025], book.Current.Select(e => e.On.Year).Distinct().Order());
        Assert.Contains(book.Current, e => e.Note?.StartsWith("A demo:", StringComparison.Ordinal) == true);
    }

    [Fact]
    public void Its_report_has_no_more_than_450_words()
    {
        int words = Report().Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries).Count(w => w.Any(char.IsLetterOrDigit));
        Assert.InRange(words, 100, MostWords);
    }

    /// <summary>What was put into the book comes out as what to do: one lesson a plot.</summary>
    [Fact]
    public void Each_plot_teaches_what_was_put_into_it()
    {
        string report = Report().ReplaceLineEndings(" ");
        while (report.Contains("  ", StringComparison.Ordinal))
        {
            report = report.Replace("  ", " ", StringComparison.Ordinal);
        }

        Assert.Contains("Water pH: 5.3 to 6.3 over 5 tests, a trend.", report, StringComparison.Ordinal);
        Assert.Contains("Brassicas stood on Cedar Corner in 2024 and 2025", report, StringComparison.Ordinal);
        Assert.Contains("Winter oats failed twice or more on Long Strip, sown 2021-09-08 and 2024-09-08", report, StringComparison.Ordinal);
        Assert.Contains("Crimson clover comes up at", report, StringComparison.Ordinal);
        Assert.Contains("560 lb of pelleted lime spread on 2025-10-04", report, StringComparison.Ordinal);
        Assert.Contains("In December next to nothing was eaten on Pond Field", report, StringComparison.Ordinal);
    }
}
