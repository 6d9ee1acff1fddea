using UnitsNet;

namespace PlotAgronomy.Seeds;

/// <summary>Soil temperatures for germination: seed zone, daily average.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class GerminationTemperature
{
    private const string Figure = "germination-temperature";
    private const string Unit = "f";

    /// <summary>Gets the lowest temperature for acceptable (not first) germination.</summary>
    public required Temperature Minimum { get; init; }

    /// <summary>Gets the lower end of the best range.</summary>
    public required Temperature BestFrom { get; init; }

    /// <summary>Gets the upper end of the best range.</summary>
    public required Temperature BestTo { get; init; }

    /// <summary>Gets the sources of the lowest temperature.</summary>
    public required Origin Evidence
    {
        get;
        init => field = Guard.NotNull(value, nameof(Evidence));
    }

    /// <summary>Gets the sources of the best range; those of the lowest temperature when nothing else is said.</summary>
    public Origin BestEvidence
    {
        get => field ?? Evidence;
        init => field = Guard.NotNull(value, nameof(BestEvidence));
    }

    internal static GerminationTemperature? Of(KindObservations kind)
    {
        var best = PrintedSpan.Of(kind, Figure, "best", [Unit]);
        var minimum = PrintedSpan.OfNumbers(kind, Figure, "minimum", Unit);
        if (best is null && minimum is null)
        {
            return null;
        }

        if (best is null || minimum is null)
        {
            throw kind.Missing(Figure, best is null ? "best" : "minimum");
        }

        return new()
        {
            Minimum = Temperature.FromDegreesFahrenheit(minimum.Low),
            BestFrom = Temperature.FromDegreesFahrenheit(best.Low),
            BestTo = Temperature.FromDegreesFahrenheit(best.High),
            Evidence = minimum.Origin,
            BestEvidence = best.Origin,
        };
    }

    /// <summary>The least and the best warmth.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"from {Degrees(Minimum)} F, best {Degrees(BestFrom)} to {Degrees(BestTo)} F";

    private static string Degrees(Temperature temperature)
    {
        double fahrenheit = temperature.DegreesFahrenheit;
        return Amounts.Print(fahrenheit, 0);
    }
}
