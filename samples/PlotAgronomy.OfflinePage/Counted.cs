namespace PlotAgronomy.OfflinePage;

/// <summary>Numbers of things in words.</summary>
internal static class Counted
{
    /// <summary>Such as <c>1 mistake</c> and <c>2 mistakes</c>.</summary>
    internal static string Of(int count, string one, string? more = null) =>
        $"{Amounts.Print(count, 0)} {Word(count, one, more ?? $"{one}s")}";

    private static string Word(int count, string one, string more) => count == 1 ? one : more;
}
