using System.Collections.Immutable;
using System.Globalization;
using PlotAgronomy.Planning;
using PlotAgronomy.Weather;

namespace PlotAgronomy.Sheets;

/// <summary>Words of days, chances and verdicts.</summary>
internal static class TimingWords
{
    internal static string Verdict(PlantingVerdict verdict) => PlantingDay.VerdictWords[verdict];

    internal static string Chance(RainChance chance) => $"{chance}";

    /// <summary>The chance where the heading says percent.</summary>
    internal static string Percent(RainChance chance) => Chance(chance).Replace(" %", "", StringComparison.Ordinal);

    internal static string DateOr(DateOnly? date, string unknown) => date is { } known ? SheetText.Date(known) : unknown;

    /// <summary>Month and day: the year stands in the heading.</summary>
    internal static string Day(DateOnly date) => date.ToString("ddd MM-dd", CultureInfo.InvariantCulture);

    internal static string Names(IEnumerable<CropKind> kinds) => string.Join(", ", kinds.Select(SheetText.Name));

    internal static string Range(int low, int high) =>
        low == high ? Amounts.Print(low, 0) : $"{Amounts.Print(low, 0)} to {Amounts.Print(high, 0)}";

    internal static string Count(int? count, string unknown) => count is { } known ? Amounts.Print(known, 0) : unknown;

    /// <summary>The task, what is spread in it, how deep it goes, and what is worn.</summary>
    internal static string WithAmounts(SeasonWork work)
    {
        var said = work.Materials.Select(m => $"{SheetText.Weight(m.Mass)} of {m.Name}").ToList();
        if (work.Depth is var (shallowest, deepest))
        {
            string from = Amounts.Print(shallowest, "in", 2);
            string to = Amounts.Print(deepest, "in", 2);
            said.Add(from == to ? $"{to} deep" : $"{from} to {to} deep");
        }

        string amounts = said.Count == 0 ? "" : $" {string.Join(", ", said)}.";
        string wear = work.Task.Wear is { } worn ? $" Wear {worn}." : "";
        return $"{work.Task.Title}{amounts}{wear}";
    }

    internal static SheetSection Questions(ImmutableArray<OpenQuestion> questions)
    {
        var sheet = new SectionWriter("questions", "Ask first");
        sheet.Remark(questions.Select(q => (q.WhomInWords, $"{q.Text} [{q.Code}]")));
        return sheet.Close();
    }

    /// <summary>The remarks as the sheets write them: severity, text, code.</summary>
    /// <remarks>What is said of several kinds in the same words is said once.</remarks>
    internal static IEnumerable<(string Word, string Text)> Remarks(IEnumerable<Finding> findings) =>
        findings
            .GroupBy(f => (f.Code, f.Severity, Text: Bare(f)))
            .Select(g => (Finding.SeverityWords[g.Key.Severity], $"{Subjects([.. g])}{g.Key.Text} [{g.Key.Code}]"));

    internal static string Bare(Finding finding) =>
        finding.Subject is { } about && finding.Text.StartsWith($"{about}: ", StringComparison.Ordinal)
            ? finding.Text[(about.Length + 2)..]
            : finding.Text;

    private static string Subjects(ImmutableArray<Finding> same) =>
        same[0].Text.Length == Bare(same[0]).Length ? "" : $"{string.Join(", ", same.Select(f => f.Subject))}: ";
}
