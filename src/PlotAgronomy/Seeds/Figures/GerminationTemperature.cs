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
        if (kind.Find(Figure, "minimum") is not { } minimum)
        {
            return null;
        }

        var best = kind.Need(Figure, "best");
        var (from, to) = best.Range(Unit);
        return new()
        {
            Minimum = Temperature.FromDegreesFahrenheit(minimum.Number(Unit)),
            BestFrom = Temperature.FromDegreesFahrenheit(from),
            BestTo = Temperature.FromDegreesFahrenheit(to),
            Evidence = minimum.Origin,
            BestEvidence = best.Origin,
        };
    }
}
