using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Fertilizers;

/// <summary>Nitrogen lost to the air from urea on the surface: what trials measured, and the usual planning figures.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class UreaLoss
{
    private static readonly Table<UreaLoss> Trials = new("Fertilizers/Data/urea-loss.csv", FromRow);

    private static readonly Table<(double? Low, double? High, PercentRange Lost)> Planning = new(
        "Fertilizers/Data/urea-planning.csv",
        r =>
            (
                r.NumberOrNull("temperature_low_f"),
                r.NumberOrNull("temperature_high_f"),
                new PercentRange(r.Number("lost_low_pct"), r.Number("lost_high_pct"))
            )
    );

    private UreaLoss(string product, string placement, string conditions, double? from, PercentRange lost, Source source) =>
        (Product, Placement, Conditions, FromCelsius, LostOfApplied, Source) = (
            product,
            placement,
            conditions,
            from,
            lost,
            source
        );

    /// <summary>Warmth from which the trial speaks, in degrees Celsius; null where it was no matter of warmth.</summary>
    private double? FromCelsius { get; }

    /// <summary>Gets what trials measured, in the order of the table.</summary>
    public static ImmutableArray<UreaLoss> Measured => Trials.Rows;

    /// <summary>Gets the product.</summary>
    public string Product { get; }

    /// <summary>Gets where it lay.</summary>
    public string Placement { get; }

    /// <summary>Gets the conditions of the trial.</summary>
    public string Conditions { get; }

    /// <summary>Gets the part of the applied N that was lost, in percent.</summary>
    public PercentRange LostOfApplied { get; }

    /// <summary>Gets the source.</summary>
    public Source Source { get; }

    /// <summary>The usual planning figure when surface urea gets no rain for a week (common practice).</summary>
    /// <param name="soil">Temperature of the soil surface.</param>
    /// <param name="soilPh">Water pH of the soil; from 0 to 14.</param>
    /// <returns>Percent of N lost; null between the printed classes (50 to 60 F, 70 to 75 F), where practice names
    /// none.</returns>
    /// <exception cref="ArgumentOutOfRangeException">pH outside 0 to 14.</exception>
    /// <remarks>5 to 10 % at or below 50 F, 10 to 20 % from 60 to 70 F, 20 to 40 % from 75 F, or above pH 7.5 at any
    /// temperature.</remarks>
    public static PercentRange? PlanningLoss(Temperature soil, double soilPh)
    {
        double fahrenheit = soil.DegreesFahrenheit;
        Guard.Between(soilPh, 0, 14, "pH");
        var classes = Planning.Rows;
        if (soilPh > FertilizerConstants.All["urea-alkaline-ph"])
        {
            return classes[^1].Lost;
        }

        foreach (var (low, high, lost) in classes)
        {
            if (fahrenheit >= (low ?? double.NegativeInfinity) && fahrenheit <= (high ?? double.PositiveInfinity))
            {
                return lost;
            }
        }

        return null;
    }

    /// <summary>The trial with plain urea on the surface, no warmer than this soil, that lost most; null for none.</summary>
    internal static UreaLoss? WorstMeasured(Temperature soil)
    {
        double celsius = soil.DegreesCelsius;
        return Measured
            .Where(t => t is { Product: "urea", Placement: "surface" } && t.FromCelsius <= celsius + 1e-9)
            .MaxBy(t => t.LostOfApplied.High);
    }

    private static UreaLoss FromRow(CsvRow row) =>
        new(
            row.Text("product"),
            row.Text("placement"),
            row.Text("conditions"),
            row.NumberOrNull("from_temperature_c"),
            new PercentRange(row.Number("lost_low_pct"), row.Number("lost_high_pct")),
            row.Source()
        );

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Product}, {Placement}, {Conditions}";
}
