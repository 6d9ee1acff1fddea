using System.Collections.Immutable;

namespace PlotAgronomy.Sheets;

/// <summary>Steps in the order a person works.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SheetSteps : SheetBlock
{
    /// <summary>Gets the steps.</summary>
    public required ImmutableArray<string> Steps
    {
        get;
        init => field = Guard.Listed(value, nameof(Steps));
    }

    /// <summary>The steps.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.Join("; ", Steps.Select((step, i) => $"{Amounts.Print(i + 1, 0)}. {step}"));
}
