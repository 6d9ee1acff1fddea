using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Weather;

/// <summary>The reasons for and against sowing on one day.</summary>
internal sealed class PlantingReasons(
    PlantingRequest request,
    DateOnly date,
    RainOutlook rain,
    RainChance enough,
    EmergenceOutlook emergence
)
{
    private string Kind => request.Kind.ShortName;

    internal static int WindowDays => (int)WeatherConstants.All["rain-window"];

    internal static Length EnoughRain => Length.FromInches(WeatherConstants.All["enough-rain"]);

    internal ImmutableArray<Finding> All =>
        Finding.InOrder([
            Moisture(),
            .. OfRain(),
            .. Warmth(),
            .. Frost(),
            .. emergence.Findings.Where(f => f.Code is WeatherCodes.SproutsDry or WeatherCodes.SeedEaters),
            .. rain.Findings.Where(f => f.Code == WeatherCodes.WashOff),
        ]);

    private Finding Moisture() =>
        emergence.EmergesOn is { } up
            ? FindingCatalog.Create(
                WeatherCodes.UpOn,
                ("kind", Kind),
                ("date", DateText.Of(up)),
                ("count", DateText.Of(emergence.MoistDays))
            )
            : FindingCatalog.Create(
                WeatherCodes.NotUp,
                ("kind", Kind),
                ("count", DateText.Of(emergence.MoistDays)),
                ("date", DateText.Of(request.Seedbed.Days[^1].Date))
            );

    private IEnumerable<Finding> OfRain()
    {
        if (rain.PartTold < Fraction.One)
        {
            yield return FindingCatalog.Create(
                WeatherCodes.RainUntold,
                ("part", Amounts.Print(rain.PartTold, 0)),
                ("days", DateText.Of(WindowDays))
            );
        }

        double wanted = WeatherConstants.All["enough-rain-chance"] / 100;
        string code =
            enough.Low.Value >= wanted ? WeatherCodes.RainLikely
            : enough.High.Value >= wanted ? WeatherCodes.RainUnsure
            : WeatherCodes.RainUnlikely;
        yield return FindingCatalog.Create(
            code,
            ("amount", Amounts.Print(EnoughRain, "in", 2)),
            ("days", DateText.Of(WindowDays)),
            ("chance", $"{enough}")
        );
    }

    private IEnumerable<Finding> Warmth()
    {
        if (emergence.LeastCelsius is { } least && emergence.SownCelsius < least)
        {
            yield return FindingCatalog.Create(
                WeatherCodes.TooColdToSow,
                ("kind", Kind),
                ("soil", CelsiusText.OfCelsius(emergence.SownCelsius)),
                ("least", CelsiusText.OfCelsius(least))
            );
        }
    }

    private IEnumerable<Finding> Frost()
    {
        if (request.Frost is not { } frost)
        {
            yield break;
        }

        var chance = Fraction.FromPercent(WeatherConstants.All["early-frost-chance"]);
        if (LatestSowing.Of(request.Kind, frost, chance, date.Year).MaxBy(s => s.Latest) is { } last)
        {
            yield return FindingCatalog.Create(
                date > last.Latest ? WeatherCodes.TooLate : WeatherCodes.BeforeFrost,
                ("kind", Kind),
                ("use", last.Use),
                ("latest", DateText.Of(last.Latest)),
                ("frost", DateText.Of(last.Frost))
            );
        }
    }
}
