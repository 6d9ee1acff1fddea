namespace PlotAgronomy.Planning;

/// <summary>One thing that speaks against a kind here and now.</summary>
/// <param name="Decision">What follows from it; <see cref="KindDecision.Sow"/> where it is only to be minded.</param>
/// <param name="Why">The reason.</param>
internal sealed record KindObstacle(KindDecision Decision, Finding Why);
