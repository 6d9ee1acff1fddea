namespace PlotAgronomy.Spreading;

/// <summary>A stretch of the walk with one stand.</summary>
/// <param name="From">Where it begins, as a part of the whole walk.</param>
/// <param name="To">Where it ends, as a part of the whole walk.</param>
/// <param name="PlantsPerSquareFoot">Plants per ft2 on it.</param>
[JsonConverter(typeof(NotForJson))]
public sealed record StandStretch(Fraction From, Fraction To, double PlantsPerSquareFoot);
