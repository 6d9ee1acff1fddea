using PlotAgronomy.Seeds;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>One kind in a mixed hopper.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class HopperShare
{
    private HopperShare(PassKind kind, double pounds, double poundsPerMinute, double plantsPerSeed)
    {
        Kind = kind;
        Pounds = pounds;
        PoundsPerMinute = poundsPerMinute;
        PlantsPerSeed = plantsPerSeed;
    }

    /// <summary>Gets the kind.</summary>
    public PassKind Kind { get; }

    /// <summary>Gets the weight loaded for the plot.</summary>
    internal double Pounds { get; }

    /// <summary>Gets the flow of the kind alone through the gate as it is set.</summary>
    internal double PoundsPerMinute { get; }

    /// <summary>Gets the time in which the kind alone flows out.</summary>
    internal double MinutesAlone => SpreaderMath.MinutesToFlow(Pounds, PoundsPerMinute);

    internal double PlantsPerSeed { get; }

    internal double SeedsPerPound => SeedMath.MilligramsPerPound / Kind.MilligramsPerSeed;

    /// <summary>Creates a share.</summary>
    /// <param name="kind">Kind.</param>
    /// <param name="load">Weight loaded for the plot; above 0.</param>
    /// <param name="flowAlone">Flow of the kind alone through the gate as it is set: measured, or a first guess; above 0.</param>
    /// <param name="plantsPerSeed">Part of the seeds that make a plant.</param>
    /// <returns>The share.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static HopperShare FromFlow(PassKind kind, Mass load, MassFlow flowAlone, Fraction plantsPerSeed)
    {
        ArgumentNullException.ThrowIfNull(kind);
        double pounds = load.Pounds;
        double poundsPerMinute = flowAlone.PoundsPerMinute;
        return new HopperShare(
            kind,
            Guard.Above(pounds, 0, "lb", nameof(load)),
            Guard.Above(poundsPerMinute, 0, "lb/min", nameof(flowAlone)),
            plantsPerSeed.Value
        );
    }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Kind.Name}: {Amounts.Print(Pounds, 2)} lb";
}
