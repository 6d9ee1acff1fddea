namespace PlotAgronomy.Sheets;

/// <summary>What one line of the shopping list comes to.</summary>
/// <param name="FromShed">Weight that is taken from the shed; null for what is bought.</param>
/// <param name="Packages">Packages.</param>
/// <param name="Cost">What they cost.</param>
internal readonly record struct ShoppingLine(string? FromShed, string Packages, decimal Cost);
