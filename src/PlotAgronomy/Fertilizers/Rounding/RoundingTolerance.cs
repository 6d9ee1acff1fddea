namespace PlotAgronomy.Fertilizers;

/// <summary>How far a rounded amount may stray from the need before it is remarked on.</summary>
/// <remarks>No publication read states a figure; the defaults are common practice. Labels themselves are certain only to 6 or 7 %
/// of each nutrient, so finer claims are not supported by the bag.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class RoundingTolerance
{
    private RoundingTolerance(double accept, double nitrogenOver, double anyShort) =>
        (AcceptPercent, NitrogenOverPercent, ShortPercent) = (accept, nitrogenOver, anyShort);

    /// <summary>Gets the defaults: 10 % either way, 10 % over on nitrogen, 20 % short on any.</summary>
    public static RoundingTolerance Default { get; } =
        new(
            FertilizerConstants.All["tolerance-accept"],
            FertilizerConstants.All["tolerance-nitrogen-over"],
            FertilizerConstants.All["tolerance-short"]
        );

    /// <summary>Gets the percent over or under a need that counts as met.</summary>
    public double AcceptPercent { get; }

    /// <summary>Gets the percent over on nitrogen from which it is remarked on.</summary>
    public double NitrogenOverPercent { get; }

    /// <summary>Gets the percent short of any need from which it is remarked on.</summary>
    public double ShortPercent { get; }

    /// <summary>Sets tolerances of one's own.</summary>
    /// <param name="acceptPercent">Percent over or under that counts as met; from 0 to 100.</param>
    /// <param name="nitrogenOverPercent">Percent over on nitrogen that is remarked on; at least 0.</param>
    /// <param name="shortPercent">Percent short that is remarked on; from 0 to 100.</param>
    /// <returns>The tolerance.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static RoundingTolerance FromPercent(double acceptPercent, double nitrogenOverPercent, double shortPercent) =>
        new(
            Guard.Between(acceptPercent, 0, 100, "%"),
            Guard.AtLeast(nitrogenOverPercent, 0, "%"),
            Guard.Between(shortPercent, 0, 100, "%")
        );

    /// <summary>The limits.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"within {Amounts.Print(AcceptPercent, 1)} %, nitrogen up to {Amounts.Print(NitrogenOverPercent, 1)} % over, "
        + $"others up to {Amounts.Print(ShortPercent, 1)} % short";
}
