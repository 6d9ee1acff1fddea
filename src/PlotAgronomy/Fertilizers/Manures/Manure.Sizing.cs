namespace PlotAgronomy.Fertilizers;

/// <content>How much manure brings a need.</content>
public sealed partial class Manure
{
    /// <summary>Rate that brings a need of available nitrogen, and what else it brings.</summary>
    /// <param name="need">Available nitrogen wanted.</param>
    /// <param name="available">Part of total N available in the season; above 0. See <see cref="ManureAvailability"/>.</param>
    /// <returns>The rate as a range; the rich end needs least.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Available part is zero, or the manure holds no nitrogen.</exception>
    /// <remarks>tons per acre = need / (total N x available part).</remarks>
    public ManureRate ForNitrogen(ApplicationRate need, NitrogenAvailability available)
    {
        ArgumentNullException.ThrowIfNull(available);
        Guard.Above(available.OfTotal.Value, 0, "(a part of the whole)", nameof(available));
        return Rate(need, Nitrogen, available.OfTotal, available, PlantNutrient.Nitrogen);
    }

    /// <summary>Rate that brings a need of P2O5, and what else it brings: the honest base where the soil test is medium or
    /// higher.</summary>
    /// <param name="need">P2O5 wanted.</param>
    /// <param name="phosphate">Part of total P2O5 that counts; above 0.</param>
    /// <param name="nitrogen">Part of total N available in the season, for what comes along.</param>
    /// <returns>The rate as a range.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The part that counts is zero, or the manure holds no phosphate.</exception>
    /// <remarks>tons per acre = need / (total P2O5 x part that counts).</remarks>
    public ManureRate ForPhosphate(ApplicationRate need, PhosphateAvailability phosphate, NitrogenAvailability nitrogen)
    {
        ArgumentNullException.ThrowIfNull(phosphate);
        ArgumentNullException.ThrowIfNull(nitrogen);
        Guard.Above(phosphate.OfTotal.Value, 0, "(a part of the whole)", nameof(phosphate));
        return Rate(need, Phosphate, phosphate.OfTotal, nitrogen, PlantNutrient.Phosphate);
    }

    private ManureRate Rate(
        ApplicationRate need,
        PoundsPerTonRange total,
        Fraction counted,
        NitrogenAvailability nitrogen,
        PlantNutrient sizedBy
    )
    {
        string unit = sizedBy == PlantNutrient.Nitrogen ? "lb N per ton" : "lb P2O5 per ton";
        Guard.Above(total.Low, 0, unit, nameof(total));
        var content = total.Times(counted.Value);
        return new ManureRate(
            this,
            need,
            sizedBy,
            counted,
            End(need, content, nitrogen.OfTotal, c => c.High),
            End(need, content, nitrogen.OfTotal, c => c.Low)
        );
    }

    /// <summary>The lot at the rich end of every range, or at the poor end.</summary>
    private ManureRateEnd End(
        ApplicationRate need,
        PoundsPerTonRange content,
        Fraction available,
        Func<PoundsPerTonRange, double> endOf
    )
    {
        double tonsPerAcre = FertilizerMath.TonsFor(need.PoundsPerAcre, endOf(content));
        return new ManureRateEnd
        {
            PoundsPerTon = endOf(content),
            Rate = ApplicationRate.FromShortTonsPerAcre(tonsPerAcre),
            AvailableNitrogen = Brings(Nitrogen) * available.Value,
            Phosphate = Brings(Phosphate),
            Potash = Brings(Potash),
        };

        ApplicationRate Brings(PoundsPerTonRange content) => ApplicationRate.FromPoundsPerAcre(tonsPerAcre * endOf(content));
    }
}
