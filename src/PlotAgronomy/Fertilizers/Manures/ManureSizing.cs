namespace PlotAgronomy.Fertilizers;

/// <summary>How much manure brings a need.</summary>
public static class ManureSizing
{
    /// <summary>Rate that brings a need of available nitrogen, and what else it brings.</summary>
    /// <param name="manure">Manure.</param>
    /// <param name="need">Available nitrogen wanted.</param>
    /// <param name="available">Part of total N available in the season; above 0. See <see cref="ManureAvailability"/>.</param>
    /// <returns>The rate as a range; the rich end needs least.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Available part is zero, or the manure holds no nitrogen.</exception>
    /// <remarks>tons per acre = need / (total N x available part).</remarks>
    public static ManureRate ForNitrogen(this Manure manure, ApplicationRate need, Fraction available)
    {
        ArgumentNullException.ThrowIfNull(manure);
        Guard.Above(available.Value, 0, "(a part of the whole)", nameof(available));
        return Rate(manure, need, manure.Nitrogen.Times(available.Value), available, PlantNutrient.Nitrogen);
    }

    /// <summary>Rate that brings a need of P2O5, and what else it brings: the honest base where the soil test is medium or
    /// higher.</summary>
    /// <param name="manure">Manure.</param>
    /// <param name="need">P2O5 wanted.</param>
    /// <param name="available">Part of total N available in the season.</param>
    /// <returns>The rate as a range.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The manure holds no phosphate.</exception>
    public static ManureRate ForPhosphate(this Manure manure, ApplicationRate need, Fraction available)
    {
        ArgumentNullException.ThrowIfNull(manure);
        return Rate(manure, need, manure.Phosphate, available, PlantNutrient.Phosphate);
    }

    private static ManureRate Rate(
        Manure manure,
        ApplicationRate need,
        PoundsPerTonRange content,
        Fraction available,
        PlantNutrient sizedBy
    )
    {
        string unit = sizedBy == PlantNutrient.Nitrogen ? "lb N per ton" : "lb P2O5 per ton";
        Guard.Above(content.Low, 0, unit, nameof(content));
        return new ManureRate(
            manure,
            need,
            sizedBy,
            available,
            End(manure, need, content, available, c => c.High),
            End(manure, need, content, available, c => c.Low)
        );
    }

    /// <summary>The lot at the rich end of every range, or at the poor end.</summary>
    private static ManureRateEnd End(
        Manure manure,
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
            AvailableNitrogen = Brings(manure.Nitrogen) * available.Value,
            Phosphate = Brings(manure.Phosphate),
            Potash = Brings(manure.Potash),
        };

        ApplicationRate Brings(PoundsPerTonRange content) => ApplicationRate.FromPoundsPerAcre(tonsPerAcre * endOf(content));
    }
}
