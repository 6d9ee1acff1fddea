using PlotAgronomy.Records;

namespace PlotAgronomy.FieldQuestions.Records;

/// <summary>Four reports of one plot; the last one came from another laboratory. Did the phosphorus really rise, and does the
/// pH fall?</summary>
internal static class OtherLaboratory
{
    private const string Plot = "Upper Terrace";

    internal static void Answer(TextWriter output)
    {
        var book = PlotBook.Empty.With(
            "vera",
            Reported(2018, "county laboratory", ph: 6.6, phosphorus: 21),
            Reported(2021, "county laboratory", ph: 6.4, phosphorus: 23),
            Reported(2024, "county laboratory", ph: 6.1, phosphorus: 22),
            Reported(2026, "river laboratory", ph: 6.3, phosphorus: 34));
        var trends = ReadingTrend.All(book, Plot);
        foreach (var trend in trends)
        {
            string real = trend.IsRealChange switch
            {
                true => "more than a laboratory errs",
                false => "no more than a laboratory errs",
                null => "nothing to compare it with",
            };
            string readings = string.Join(", ", trend.Points.Select(p => Amounts.Print(p.Value, 1)));
            output.WriteLine($"{trend.What}, {trend.Laboratory}: {readings}; {real}");
        }

        output.Warn(trends.SelectMany(t => t.Findings).DistinctBy(f => f.Code));
    }

    private static SoilReportEntry Reported(int year, string laboratory, double ph, double phosphorus) => new()
    {
        On = new(year, 3, 10),
        Plot = Plot,
        Report = new SoilReport
        {
            Laboratory = laboratory,
            WaterPh = WaterPh.FromValue(ph),
            Readings =
            [
                SoilReading.FromPrinted(SoilAnalyte.Phosphorus, phosphorus, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3),
            ],
        },
    };
}
