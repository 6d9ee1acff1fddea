using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Fertilizers;

/// <summary>A rule of one place about fertilizer near water or before rain. Examples: your own law goes first.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SetbackRule
{
    private static readonly Table<SetbackRule> Everything = new("Fertilizers/Data/setbacks.csv", r => new SetbackRule(
        r.Text("rule"),
        r.Text("text"),
        r.NumberOrNull("distance_ft") is { } feet ? Length.FromFeet(feet) : null,
        r.Source()
    ));

    private SetbackRule(string rule, string text, Length? distance, Source source) =>
        (Rule, Text, Distance, Source) = (rule, text, distance, source);

    /// <summary>Gets the rules, in the order of the table.</summary>
    public static ImmutableArray<SetbackRule> Examples => Everything.Rows;

    /// <summary>Gets whose rule it is.</summary>
    public string Rule { get; }

    /// <summary>Gets the rule in words.</summary>
    public string Text { get; }

    /// <summary>Gets the distance, the larger end where a range is printed; null when the rule is about weather.</summary>
    public Length? Distance { get; }

    /// <summary>Gets the source.</summary>
    public Source Source { get; }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Text;
}
