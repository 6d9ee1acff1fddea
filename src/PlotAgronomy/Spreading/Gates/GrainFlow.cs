using System.Collections.Immutable;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>How seed flows by gravity through a round hole.</summary>
/// <remarks>W = 35 rho sqrt(g) (D - 1.4 d)^2.5, W in g/min, rho bulk density in g/cm3, g = 981 cm/s2, D hole and d seed diameter
/// in
/// cm; no flow at D = 1.4 d and below. Fitted on seeds through flat-bottomed cylinders. Source: SPREAD-S28. The level in the
/// hopper does not matter above about 1.2 hopper diameters, and the hopper must be wider than 2.5 D (SPREAD-S30). A gate, an
/// agitator or a slope changes the factor: use it to compare materials, and a weighed run to set the gate.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class GrainFlow
{
    /// <summary>In cm/s2, as the law is printed.</summary>
    private static double Gravity => SpreadingConstants.All["grain-flow-gravity"];

    private readonly double seedCentimeters;
    private readonly double gramsPerCubicCentimeter;

    private GrainFlow(double seedCentimeters, double gramsPerCubicCentimeter)
    {
        this.seedCentimeters = seedCentimeters;
        this.gramsPerCubicCentimeter = gramsPerCubicCentimeter;
    }

    private static double Factor => SpreadingConstants.All["grain-flow-factor"];

    private static double EmptyRim => SpreadingConstants.All["grain-flow-rim"];

    private static double Power => SpreadingConstants.All["grain-flow-power"];

    /// <summary>Describes a material.</summary>
    /// <param name="seedDiameter">Seed diameter; above 0.</param>
    /// <param name="bulkDensity">Bulk density, as poured; above 0.</param>
    /// <returns>The material.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static GrainFlow For(Length seedDiameter, Density bulkDensity)
    {
        double centimeters = seedDiameter.Centimeters;
        double density = bulkDensity.GramsPerCubicCentimeter;
        return new GrainFlow(
            Guard.Above(centimeters, 0, "cm", nameof(seedDiameter)),
            Guard.Above(density, 0, "g/cm3", nameof(bulkDensity))
        );
    }

    /// <summary>Flow through a round hole.</summary>
    /// <param name="hole">Hole diameter; above 0.</param>
    /// <returns>The flow; zero when the hole is no wider than 1.4 seed diameters.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public MassFlow Through(Length hole)
    {
        double centimeters = hole.Centimeters;
        return MassFlow.FromPoundsPerMinute(PoundsPerMinuteThrough(Guard.Above(centimeters, 0, "cm", nameof(hole))));
    }

    /// <summary>Round hole that gives a flow.</summary>
    /// <param name="flow">Flow; above 0.</param>
    /// <returns>The hole diameter.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public Length HoleFor(MassFlow flow)
    {
        double poundsPerMinute = flow.PoundsPerMinute;
        return Length.FromCentimeters(HoleCentimeters(Guard.Above(poundsPerMinute, 0, "lb/min", nameof(flow))));
    }

    /// <summary>Lays out the flow through a round hole.</summary>
    /// <param name="hole">Hole diameter; above 1.4 seed diameters, since nothing flows below.</param>
    /// <returns>The line of the sum.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A hole that lets nothing through.</exception>
    public ImmutableArray<WorkedLine> ShowWork(Length hole)
    {
        double centimeters = hole.Centimeters;
        Guard.Above(centimeters, EmptyRim * seedCentimeters, "cm", nameof(hole));
        double grams = PoundsPerMinuteThrough(centimeters) * ExactUnits.GramsPerPound;
        return
        [
            SpreadingFormulas
                .All["spread-grain-flow"]
                .Line($"{Amounts.Print(grams, 1)} g/min", [("hole", Amounts.Print(centimeters, 3)), .. Places()]),
        ];
    }

    /// <summary>Lays out the round hole that gives a flow.</summary>
    /// <param name="flow">Flow; above 0.</param>
    /// <returns>The line of the sum.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public ImmutableArray<WorkedLine> ShowWork(MassFlow flow)
    {
        double poundsPerMinute = flow.PoundsPerMinute;
        double centimeters = HoleCentimeters(Guard.Above(poundsPerMinute, 0, "lb/min", nameof(flow)));
        return
        [
            SpreadingFormulas
                .All["spread-grain-hole"]
                .Line(
                    $"{Amounts.Print(centimeters, 3)} cm",
                    [("flow", Amounts.Print(poundsPerMinute * ExactUnits.GramsPerPound, 1)), .. Places()]
                ),
        ];
    }

    internal double PoundsPerMinuteThrough(double holeCentimeters)
    {
        double grams = SpreaderMath.GramsPerMinute(
            holeCentimeters,
            seedCentimeters,
            gramsPerCubicCentimeter,
            Factor,
            EmptyRim,
            Gravity,
            Power
        );
        return grams / ExactUnits.GramsPerPound;
    }

    internal double HoleCentimeters(double poundsPerMinute) =>
        SpreaderMath.HoleCentimeters(
            poundsPerMinute * ExactUnits.GramsPerPound,
            seedCentimeters,
            gramsPerCubicCentimeter,
            Factor,
            EmptyRim,
            Gravity,
            Power
        );

    private (string Place, string Value)[] Places() =>
        [
            ("seed diameter", Amounts.Print(seedCentimeters, 3)),
            ("bulk density", Amounts.Print(gramsPerCubicCentimeter, 3)),
            ("factor", Amounts.Print(Factor, 2)),
            ("empty rim", Amounts.Print(EmptyRim, 2)),
            ("gravity", Amounts.Print(Gravity, 1)),
            ("power", Amounts.Print(Power, 2)),
        ];

    /// <summary>The grain.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"grain of {Amounts.Print(seedCentimeters, 3)} cm at {Amounts.Print(gramsPerCubicCentimeter, 3)} g/cm3";
}
