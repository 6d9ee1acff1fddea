using System.Text.RegularExpressions;

namespace PlotAgronomy.OfflinePage.Fields;

/// <summary>What stands above a field: its name in words.</summary>
internal static partial class FieldLabels
{
    private static readonly Dictionary<string, string> Named = new()
    {
        ["a"] = "Side a",
        ["b"] = "Side b",
        ["c"] = "Side c",
        ["around"] = "Sides all round",
        ["cec"] = "Exchange capacity (CEC)",
        ["cce"] = "Calcium carbonate equivalent (CCE)",
        ["ph"] = "pH",
        ["homePh"] = "pH by strip or meter",
        ["waterPh"] = "pH in water",
        ["saltPh"] = "pH in a salt solution",
        ["targetPh"] = "Target pH",
        ["degreesF"] = "Degrees F",
        ["materials"] = "Bags and tags",
        ["growing"] = "What is sown",
        ["method"] = "Way of planting",
        ["methods"] = "Published systems",
        ["tag"] = "Tag, line by line",
    };

    /// <summary>One of a list.</summary>
    private static readonly Dictionary<string, string> One = new()
    {
        ["kinds"] = "kind",
        ["lime"] = "lime",
        ["outline"] = "corner",
        ["around"] = "side",
        ["noxious"] = "noxious weed",
    };

    internal static string Of(string name) => Named.TryGetValue(name, out string? words) ? words : Capital(Words(name));

    /// <summary>A label inside a sentence.</summary>
    internal static string InText(string name)
    {
        string label = Of(name);
        return label.Length > 1 && char.IsUpper(label[1]) ? label : char.ToLowerInvariant(label[0]) + label[1..];
    }

    /// <summary>The same, in quotation marks where it is more than a word.</summary>
    internal static string Quoted(string name) => InText(name).Contains(' ') ? $"\"{Of(name)}\"" : InText(name);

    /// <summary>One item of a list: <c>seed lot</c> of <c>seedLots</c>.</summary>
    internal static string OneOf(string name) => One.TryGetValue(name, out string? word) ? word : Words(name).TrimEnd('s');

    /// <summary>Where a problem stands, in the words of the labels: <c>Soil report, readings 2, value</c>.</summary>
    internal static string InWords(Plan.PlanPath path) =>
        Capital(string.Join(", ", path.Steps.Where(s => s.Index is null).Select(s => InText(s.Name) + Number(path, s))));

    private static string Number(Plan.PlanPath path, Plan.PlanStep step)
    {
        int next = path.Steps.IndexOf(step) + 1;
        return next < path.Steps.Length && path.Steps[next].Index is { } index ? $" {Amounts.Print(index + 1, 0)}" : "";
    }

    private static string Words(string name) => BeforeCapital().Replace(name, " ").ToLowerInvariant();

    private static string Capital(string words) => words.Length == 0 ? "" : char.ToUpperInvariant(words[0]) + words[1..];

    [GeneratedRegex("(?<=[a-z])(?=[A-Z])")]
    private static partial Regex BeforeCapital();
}
