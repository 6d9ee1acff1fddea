using PlotAgronomy.Reference;

namespace PlotAgronomy.Fertilizers;

/// <summary>The control officials' overall index of a sample: the value found in percent of the value guaranteed.</summary>
/// <remarks>The formula is from memory and carries its caution. Below 98 a lot counts as deficient (source FERT-AGC).</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class LabelIndex
{
    private LabelIndex(double percent) => Percent = percent;

    /// <summary>Gets the index in percent.</summary>
    public double Percent { get; }

    /// <summary>Gets the caution that the formula was not yet checked against the publication.</summary>
    public Finding Caution { get; } = MemoryGate.FindingFor("the overall index", FertilizerFormulas.All["label-index"].Origin!);

    /// <summary>Works out the index from N, P2O5 and K2O.</summary>
    /// <param name="guaranteed">Analysis on the label.</param>
    /// <param name="found">Analysis found.</param>
    /// <param name="nitrogenValue">Money per lb N; at least 0.</param>
    /// <param name="phosphateValue">Money per lb P2O5; at least 0.</param>
    /// <param name="potashValue">Money per lb K2O; at least 0.</param>
    /// <returns>The index.</returns>
    /// <exception cref="ArgumentException">A negative value, or a guarantee worth nothing.</exception>
    /// <remarks>index = 100 x sum(found x value) / sum(guaranteed x value).</remarks>
    public static LabelIndex For(
        FertilizerAnalysis guaranteed,
        FertilizerAnalysis found,
        decimal nitrogenValue,
        decimal phosphateValue,
        decimal potashValue
    )
    {
        ArgumentNullException.ThrowIfNull(guaranteed);
        ArgumentNullException.ThrowIfNull(found);
        double[] values =
        [
            (double)Guard.AtLeast(nitrogenValue, 0m, "per lb"),
            (double)Guard.AtLeast(phosphateValue, 0m, "per lb"),
            (double)Guard.AtLeast(potashValue, 0m, "per lb"),
        ];
        double worth = Worth(guaranteed);
        Guard.Above(worth, 0, "(the value of the guarantee)", nameof(guaranteed));
        return new LabelIndex(FertilizerMath.OverallIndex(Worth(found), worth));

        double Worth(FertilizerAnalysis analysis) =>
            values.Select((value, i) => value * analysis.Percent((PlantNutrient)i)).Sum();
    }

    /// <summary>The index.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Amounts.Print(Percent, 1)} % of what the label is worth";
}
