using System.Text;
using PlotAgronomy.Calendar;
using PlotAgronomy.Seeds;
using PlotAgronomy.Weather;

namespace PlotAgronomy.FieldQuestions.Weather;

/// <summary>Until when may forage turnips be sown on a farm whose lows of six autumns lie in a file of the daily
/// network?</summary>
internal static class Frost
{
    /// <summary>The first day at or below freezing of each autumn. All are made up, and so are the lows before.</summary>
    private static readonly DateOnly[] Freezes =
        [new(2020, 10, 17), new(2021, 10, 24), new(2022, 10, 9), new(2023, 10, 31), new(2024, 10, 14), new(2025, 10, 20)];

    internal static void Answer(TextWriter output)
    {
        using var file = new MemoryStream(Encoding.UTF8.GetBytes(string.Concat(Freezes.SelectMany(Autumn))));
        var history = WeatherHistory.ReadStation(file, "lows.csv");
        output.Warn(history.Findings);
        var frost = FrostDates.FromHistory(history, Temperature.FromDegreesFahrenheit(32)).Value;
        output.WriteLine($"First freezes: {string.Join(", ", frost.Observed.Select(d => $"{d.Aloud()} {d.Year}"))}.");
        output.Tell(frost);
        output.WriteLine($"By 10 October it has frozen in {Amounts.Print(frost.ChanceBy(new(2026, 10, 10)), 0)} of the years.");

        var turnip = KindDates.Of(KindCatalog.Standard.Find("forage-turnip"), new(2026, 8, 5), frost: frost);
        var early = turnip.BeforeEarlyFrost;
        var middle = turnip.BeforeMiddleFrost;
        string half = turnip.MiddleFrost!.Value.Aloud();
        output.WriteLine($"One year of ten has frozen by {turnip.EarlyFrost!.Value.Aloud()}, half of them by {half}.");
        foreach (var (careful, even) in early.Zip(middle))
        {
            output.WriteLine($"{careful.Use}: sow by {careful.Safe.Aloud()}; on {even.Safe.Aloud()} the odds are even.");
        }

        if (turnip.SafeForForage(Fraction.FromPercent(10)) is { } safe)
        {
            output.WriteLine($"For leaves to be eaten before an early freeze sow by {safe.Aloud()}.");
        }

        foreach (var cold in early[0].HarmedBy)
        {
            output.WriteLine($"At {Amounts.Print(cold.Milder.DegreesFahrenheit, 0)} F: {cold.Words}.");
        }
    }

    private static IEnumerable<string> Autumn(DateOnly freeze)
    {
        for (var day = new DateOnly(freeze.Year, 7, 20); day <= freeze; day = day.AddDays(1))
        {
            int tenthsCelsius = day == freeze ? -8 : 90;
            yield return FormattableString.Invariant($"FARM,{day:yyyyMMdd},TMIN,{tenthsCelsius},,,,\n");
        }
    }
}
