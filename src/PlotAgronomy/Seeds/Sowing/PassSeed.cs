namespace PlotAgronomy.Seeds;

/// <summary>What of a seed decides with which others it shares a pass of the spreader.</summary>
/// <param name="Size">Any measure of its size that is proportional to a diameter; above 0.</param>
/// <param name="IsChaffy">True for light, awned or fluffy seed.</param>
/// <param name="DeepestInches">Deepest sowing depth in inches; null when it is not known.</param>
internal readonly record struct PassSeed(double Size, bool IsChaffy, double? DeepestInches);
