namespace PlotAgronomy.Liming;

/// <content>The same need counted in another lime.</content>
public sealed partial class LimeRate
{
    /// <summary>The same need counted in another lime.</summary>
    /// <param name="basis">Lime to count in.</param>
    /// <param name="through">Material whose figure in both indices is known. Needed when the two limes are rated in different
    /// indices; <see cref="LimingMaterial.PureCarbonate"/> takes each index at its word.</param>
    /// <returns>The conversion, with its factor.</returns>
    /// <exception cref="InvalidOperationException">The strength of a lime is not printed, or a material to go through is needed
    /// and missing.</exception>
    /// <remarks>Same index: figure of this basis / figure of the other. Different indices: the material stands between them:
    /// (this basis / material) in this index x (material / other basis) in the other.</remarks>
    public LimeRateConversion ConvertTo(LimeBasis basis, LimingMaterial? through = null)
    {
        ArgumentNullException.ThrowIfNull(basis);
        double factor = Factor(Basis, basis, through);
        return new LimeRateConversion(
            this,
            Relabelled(LimeSums.InOtherLime(OfBasis.PoundsPerAcre, factor), basis),
            factor,
            through
        );
    }

    internal static double Factor(LimeBasis old, LimeBasis wanted, LimingMaterial? through)
    {
        var from = FigureOf(old);
        var to = FigureOf(wanted);
        if (from.Index == to.Index)
        {
            return LimeSums.StrengthFactor(from.Value, to.Value);
        }

        return through is null
            ? throw new InvalidOperationException(
                $"{old.Name} is rated by {from.Index.Name}, {wanted.Name} by {to.Index.Name}: name the material the "
                    + "conversion goes through."
            )
            : LimeSums.FactorThrough(
                from.Value,
                LimeRate.Effective(through, from.Index),
                LimeRate.Effective(through, to.Index),
                to.Value
            );
    }

    private static LimeFigure FigureOf(LimeBasis basis) =>
        basis.Figure
        ?? throw new InvalidOperationException($"The strength of '{basis.Name}' is not printed: such a this is not converted.");
}
