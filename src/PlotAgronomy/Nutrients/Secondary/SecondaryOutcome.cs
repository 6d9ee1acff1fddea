namespace PlotAgronomy.Nutrients;

/// <summary>What a rule's run came to: the numbers, and what the reason is made of.</summary>
internal sealed class SecondaryOutcome
{
    internal ApplicationRate? Low { get; init; }

    internal ApplicationRate? High { get; init; }

    /// <summary>Null when the rule could not answer.</summary>
    internal bool? IsNeeded { get; init; }

    /// <summary>The number that was held against the limits.</summary>
    internal double? Test { get; init; }

    /// <summary>The row whose equation gave the rate; null for a rate that is printed.</summary>
    internal SecondaryRuleRow? EquationRow { get; init; }

    /// <summary>The advice printed with the rate; null where the numbers tell the reason.</summary>
    internal string? Advice { get; init; }

    internal string Reason =>
        Advice
        ?? (
            IsNeeded is null ? "no figure"
            : Test is { } value ? $"the test is high enough ({Amounts.Print(value, 4)}), so none is needed"
            : "it does not apply here, so none is needed"
        );
}
