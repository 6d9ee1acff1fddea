namespace PlotAgronomy.Blends;

/// <summary>What a search for shares came to.</summary>
/// <param name="Steps">Steps of each candidate; null when none was found.</param>
/// <param name="IsProven">Whether the search came to its end: these are the cheapest, or there are none.</param>
internal readonly record struct FoundShares(int[]? Steps, bool IsProven);
