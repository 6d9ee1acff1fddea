namespace PlotAgronomy.Soil;

/// <summary>One base cation: its charge, and its share of the exchange capacity when that is known.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class CationShare
{
    internal CationShare(SoilAnalyte cation, CationCharge charge, Fraction? saturation = null)
    {
        Cation = cation;
        Charge = charge;
        Saturation = saturation;
    }

    /// <summary>Gets the cation.</summary>
    public SoilAnalyte Cation { get; }

    /// <summary>Gets its charge.</summary>
    public CationCharge Charge { get; }

    /// <summary>Gets its share of the exchange capacity, or null when the capacity is not known.</summary>
    public Fraction? Saturation { get; }

    /// <summary>What the charge was divided from: a concentration and that of one meq; null where the report prints
    /// charges.</summary>
    internal (double Concentration, double PerMilliequivalent)? Division { get; init; }

    internal CationShare WithSaturation(Fraction saturation) => new(Cation, Charge, saturation) { Division = Division };

    internal CationShare WithCharge(CationCharge charge) => new(Cation, charge) { Division = Division };

    /// <summary>The cation, its charge and its share.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        Saturation is { } share ? $"{SoilWords.For(Cation)} {Charge}, {share}" : $"{SoilWords.For(Cation)} {Charge}";
}
