using PlotAgronomy.Seeds;

namespace PlotAgronomy.Spreading;

/// <summary>One step in the order of work.</summary>
/// <param name="Action">What is done.</param>
/// <param name="Group">The kinds spread; null when nothing is spread.</param>
[JsonConverter(typeof(NotForJson))]
public sealed record SeedingStep(SeedingAction Action, SeedPass? Group = null);
