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
    public ManureRate ForNitrogen(ApplicationRate need, Fraction available)
    {
        Guard.Above(available.Value, 0, "(a part of the whole)", nameof(available));
        return Rate(need, Nitrogen.Times(available.Value), available, PlantNutrient.Nitrogen);
    }

    /// <summary>Rate that brings a need of P2O5, and what else it brings: the honest base where the soil test is medium or
    /// higher.</summary>
    /// <param name="need">P2O5 wanted.</param>
    /// <param name="available">Part of total N available in the season.</param>
    /// <returns>The rate as a range.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The manure holds no phosphate.</exception>
    public ManureRate ForPhosphate(ApplicationRate need, Fraction available)
    {
        return Rate(need, Phosphate, available, PlantNutrient.Phosphate);
    }

    private ManureRate Rate(ApplicationRate need, PoundsPerTonRange content, Fraction available, PlantNutrient sizedBy)
    {
        string unit = sizedBy == PlantNutrient.Nitrogen ? "lb N per ton" : "lb P2O5 per ton";
        Guard.Above(content.Low, 0, unit, nameof(content));
        return new ManureRate(
            this,
            need,
            sizedBy,
            available,
            End(need, content, available, c => c.High),
            End(need, content, available, c => c.Low)
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
