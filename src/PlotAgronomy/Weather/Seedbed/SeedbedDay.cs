using UnitsNet;

namespace PlotAgronomy.Weather;

/// <summary>The surface layer on one day. Rain is taken to fall early in the day.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SeedbedDay
{
    internal SeedbedDay() { }

    /// <summary>Gets the date.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>Gets the rain.</summary>
    public Length Rain => Length.FromMillimeters(RainMillimeters);

    /// <summary>Gets the water that the surface gives to the air.</summary>
    public Length Evaporation => Length.FromMillimeters(EvaporationMillimeters);

    /// <summary>Gets the water that seeps through the layer.</summary>
    public Length Percolation => Length.FromMillimeters(PercolationMillimeters);

    /// <summary>Gets the water that the layer lacks at the end of the day.</summary>
    public Length Depletion => Length.FromMillimeters(EndMillimeters);

    /// <summary>Gets the share of the greatest evaporation that the surface gives, once the rain has fallen: the whole where
    /// it is
    /// wet, nothing where it is dry.</summary>
    public Fraction Wetness => Fraction.FromValue(Reduction);

    internal double RainMillimeters { get; init; }

    internal double ReferenceMillimeters { get; init; }

    internal double BeforeMillimeters { get; init; }

    internal double StartMillimeters { get; init; }

    internal double PercolationMillimeters { get; init; }

    internal double GreatestCoefficient { get; init; }

    internal double Reduction { get; init; }

    internal double Coefficient { get; init; }

    internal double EvaporationMillimeters { get; init; }

    internal double EndMillimeters { get; init; }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        FormattableString.Invariant($"{Date:yyyy-MM-dd}: {Amounts.Print(Depletion, "in", 2)} dried out");
}
