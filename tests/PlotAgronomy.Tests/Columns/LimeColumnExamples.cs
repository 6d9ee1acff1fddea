using PlotAgronomy.Columns;
using PlotAgronomy.Liming;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Columns;

/// <summary>The published lime examples, each as a column of one row; title, institution and year stand in the row.</summary>
public class LimeColumnExamples
{
    private static readonly string[] Files = ["Liming/worked-lime.csv", "Liming/worked-lime-regional.csv", "Liming/worked-lime-turf.csv"];

    /// <summary>Examples with earlier lime are asked of the method itself.</summary>
    public static TheoryData<string, string> Examples
    {
        get
        {
            var examples = new TheoryData<string, string>();
            foreach (var (file, row) in Files.SelectMany(f => WorkedExamples.Table(f).Rows.Select(r => (f, r))).Where(e => e.r.NumberOrNull("earlier_ton") is null))
            {
                examples.Add(file, row.Text("id"));
            }

            return examples;
        }
    }

    [Fact]
    public void Most_examples_are_asked() => Assert.True(Examples.Count > 200, $"{Examples.Count}");

    [Theory, MemberData(nameof(Examples))]
    public void A_row_matches_the_published_figure(string file, string id)
    {
        var row = WorkedExamples.Find(file, id);
        var method = LimeMethod.Find(row.Text("method"));
        var column = LimeColumn.ForMethod(
            method,
            row.Number("target_ph"),
            method.Soils.Contains(SoilClass.Mineral) ? SoilClass.Mineral : SoilClass.Organic,
            row.ChoiceOrNull<SoilTexture>("texture"),
            row.ChoiceOrNull<SoilBuffer>("buffer"));
        double[] reading = column.ReadsWaterPh ? [] : [Reading(row)];
        double[] waterPh = [WaterPhOf(row, column, reading)];
        var run = ColumnRun.Of(1, (_, _, values, status, flags) => column.Rates(waterPh, reading, values, status, flags));
        Assert.True(run.Status[0] is RowStatus.Answered or RowStatus.NoneNeeded, $"{run.Status[0]}");
        double[] published = new double[1];
        column.Published(run.Values, published);
        var rate = ApplicationRate.FromPoundsPerAcre(run.Values[0]);
        double actual = row.Text("quantity") switch
        {
            "rate" or "gross" => rate.ShortTonsPerAcre,
            "published" => ApplicationRate.FromPoundsPerAcre(published[0]).ShortTonsPerAcre,
            "pounds" => rate.PoundsPerAcre,
            "per thousand" => rate.PoundsPerThousandSquareFeet,
            var other => throw new InvalidOperationException(other),
        };
        Assert.Equal(row.Number("expected"), actual, row.Number("tolerance") + (1e-12 * Math.Abs(actual)));
    }

    /// <summary>The pH 5.0 that stands for any pH below the target in rows of printed tables is left out beside a buffer that finds no
    /// acidity: the table reads the buffer alone, and the column would refuse the pair.</summary>
    private static double WaterPhOf(CsvRow row, LimeColumn column, double[] reading)
    {
        double waterPh = row.NumberOrNull("water_ph") ?? double.NaN;
        bool contradicts = column.Buffer is { } buffer && PhPairRule.For(buffer).Contradicts(waterPh, reading[0]);
        return contradicts ? double.NaN : waterPh;
    }

    /// <summary>In the terms of the method: of North Carolina's acidity Ac the buffer pH it comes of, 4 x (6.6 - buffer pH) = Ac.</summary>
    private static double Reading(CsvRow row) =>
        row.NumberOrNull("reading")
        ?? row.NumberOrNull("acidity_100_g")
        ?? row.NumberOrNull("aluminum_ppm")
        ?? (row.NumberOrNull("lbc30") is { } early ? LimeBufferCapacity.FromThirtyMinutes(early).MilligramsPerKilogramPerPh : 6.6 - (row.Number("acidity_100_cm3") / 4));
}
