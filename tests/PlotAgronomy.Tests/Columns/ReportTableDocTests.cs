using PlotAgronomy.Columns;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Columns;

public class ReportTableDocTests
{
    private const string Text = """
        Lab no;pH;Ac;P-I;K-I;Class;Crop
        1;5,2;1,6;25;15;mineral;deer and turkey food plot
        2;66;0,4;60;95;mineral;deer and turkey food plot
        3;6,1;0,3;<5;4O;mineral;quail strip
        """;

    [Fact]
    public void The_page_shows_what_the_code_does() =>
        DocExample.AssertCurrent("docs/report-tables.md", "tests/PlotAgronomy.Tests/Columns/ReportTableDocTests.cs", output => Example(Text, output));

    [Fact]
    public void The_page_shows_the_table_that_is_read() =>
        Assert.Contains(Text.ReplaceLineEndings("\n"), File.ReadAllText(Repository.PathOf("docs/report-tables.md")), StringComparison.Ordinal);

    private static void Example(string text, TextWriter output)
    {
        // begin example
        var profile = LaboratoryProfile.For(Institution.NorthCarolina);
        var table = ReportTable.Read(text, "county.csv",
            ReportColumn.Sample("Lab no"), ReportColumn.Crop("Crop"), ReportColumn.SoilClass("Class"), ReportColumn.WaterPh("pH"),
            ReportColumn.ExchangeableAcidity("Ac", CationChargeBasis.Per100CubicCentimeters),
            profile.Phosphorus("P-I"), profile.Potassium("K-I"));
        var asked = profile.Ask(targetPh: 6.0) with { CropWords = new Dictionary<string, CropRow> { ["quail strip"] = CropRow.UplandGamePlot } };
        var answers = ReportAnswers.For(table, asked);
        output.WriteLine(string.Join("\n", table.Problems));
        output.Write(answers.ToCsv());
        // end example
    }
}
