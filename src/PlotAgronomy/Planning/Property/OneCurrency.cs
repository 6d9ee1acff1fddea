namespace PlotAgronomy.Planning;

/// <summary>Prices of several plans can be added only in one currency.</summary>
internal static class OneCurrency
{
    /// <summary>Refuses plans with prices in different currencies, or of which only some name one.</summary>
    internal static void Of(IReadOnlyList<PlotPlan> plans, string name)
    {
        var unnamed = plans.FirstOrDefault(p => p.Currency == Currency.Unnamed);
        var named = plans.Select(p => p.Currency).Where(c => c != Currency.Unnamed).DistinctBy(c => c.Code).ToArray();
        if (named.Length > 1)
        {
            throw new ArgumentException($"The plans have prices in {string.Join(" and ", named.Select(c => c.Code))}.", name);
        }

        if (unnamed is not null && named is [{ } other])
        {
            throw new ArgumentException(
                $"The plan of '{unnamed.Plot.Name}' names no currency, and another has prices in {other.Code}: which is it?",
                name
            );
        }
    }
}
