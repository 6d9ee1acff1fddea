using System.Collections.Immutable;
using System.Globalization;
using PlotAgronomy.Liming;
using PlotAgronomy.Planning;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Sheets;

/// <summary>One soil through every lime method that accepts its reading, on one common basis.</summary>
internal static class LimeSheet
{
    internal static FieldSheet Write(PlotPlan plan, double? targetPh, bool includeFromMemory, LimingMaterial? material)
    {
        var (target, wanted) = LimeSolver.Aim(plan, [.. plan.Kinds.Select(k => k.Share)]);
        var soil = plan.Soil;
        var comparison = LimeMethodComparison.For(
            soil,
            targetPh ?? wanted,
            plan.TillageDepth ?? plan.LimeMethod.Depth,
            material,
            m => includeFromMemory || m.Status != DataStatus.Memory || m == plan.LimeMethod
        );
        var answering = comparison.Answers.Where(a => a.Need.Rate is not null).ToImmutableArray();
        return SheetEnding.Close(
            $"{plan.Plot.Name}: one soil, every lime method",
            [
                Question(plan, target, targetPh, comparison),
                SideBySide(answering, comparison),
                Silent(
                    comparison,
                    LimeRequirement
                        .Accepting(soil, includeFromMemory: true)
                        .Except(comparison.Answers.Select(a => a.Method))
                        .ToList()
                ),
            ],
            Finding.InOrder(comparison.Findings.Concat(targetPh is null ? target.Findings : [])),
            told: comparison
                .Answers.SelectMany(a => a.Need.Findings)
                .Concat(comparison.Findings.Where(f => f.Code == LimingCodes.NotComparable))
        );
    }

    private static SheetSection Question(PlotPlan plan, LimeTarget target, double? targetPh, LimeMethodComparison comparison)
    {
        var sheet = new SectionWriter("The question", 'Q');
        sheet.Say(SheetText.Origin(plan.Report));
        sheet.Say(SheetText.Acidity(plan.Report));
        sheet.Say(
            $"Target pH {Ph(comparison.TargetPh)}: {Reason(plan, target, targetPh)} A method that has no such target answers "
                + "for its own closest one."
        );
        sheet.Say(
            $"To compare them, every rate is brought to {Amounts.Print(comparison.Depth, "in", 1)} of soil and to "
                + $"{comparison.Material.Name}."
        );
        if (plan.Printed?.Lime?.Rate is { } printed)
        {
            sheet.Say($"The laboratory itself prints {printed}; the plan uses that first.");
        }

        if (plan.EarlierLime is not null)
        {
            sheet.Say("Lime spread before the sample was taken is not taken off here.");
        }

        return sheet.Close();
    }

    private static string Reason(PlotPlan plan, LimeTarget target, double? targetPh) =>
        targetPh is not null ? "as asked for."
        : plan.StatedTargetPh is not null ? "as the plan states."
        : target.SetBy is { } kind ? $"what {SheetText.Name(kind)}, the most demanding kind, asks for."
        : "the lowest of the plan's own method.";

    private static SheetSection SideBySide(ImmutableArray<LimeMethodAnswer> answering, LimeMethodComparison comparison)
    {
        var sheet = new SectionWriter("Side by side, least lime first", 'M');
        if (answering.IsEmpty)
        {
            sheet.Say("No method answers for this soil.");
            return sheet.Close();
        }

        var rows = answering.Select(a => (Answer: a, Row: RowOf(sheet, a))).ToList();
        sheet.Table(["method", "for pH", "common, ton/ac", "reading off", "numbers"], rows.Select(r => r.Row));
        sheet.Say(
            "Common is the rate on the common basis; reading off is the same if the true reading is "
                + $"{Amounts.Print(answering[0].Need.ReadingErrorPh, 2)} pH higher or lower."
        );
        if (answering.Any(a => a.Method.Status == DataStatus.Memory))
        {
            sheet.Say(SheetText.FromMemory);
        }

        Spread(
            sheet,
            $"how far apart those for pH {Ph(comparison.TargetPh)} are",
            answering.Where(a => a.TargetPh == comparison.TargetPh)
        );
        if (answering.Any(a => a.TargetPh != comparison.TargetPh))
        {
            Spread(sheet, "how far apart all are, whatever pH they aim at", answering);
        }

        sheet.Say("Each method's own figure, and what to know of it:");
        sheet.Remark(rows.Select(r => (r.Row.Figure!.Code, AboutMethod(r.Answer))));
        return sheet.Close();
    }

    private static void Spread(SectionWriter sheet, string label, IEnumerable<LimeMethodAnswer> answers)
    {
        if (LimeSpread.Of(answers) is { } spread)
        {
            sheet.Figure(
                label,
                $"{Tons(spread.Difference)} ton/ac: from {Tons(spread.Least)} to {Tons(spread.Most)}",
                spread.Line
            );
        }
    }

    private static string AboutMethod(LimeMethodAnswer answer) =>
        string.Join(
            " ",
            new[]
            {
                $"{Tons(answer.Need.Rate!.OfBasis)} ton/ac, {Amounts.Print(answer.Need.Rate.Depth, "in", 1)} deep, counted in "
                    + $"{answer.Need.Rate.Basis.Name}.",
                answer.WhyNot is { } reason ? $"It cannot be put on the common basis: {reason}" : null,
            }
                .OfType<string>()
                .Concat(Told(answer).Select(f => $"{f.Text} [{f.Code}]"))
        );

    /// <summary>What a method says of itself. That its numbers are from memory stands in the table.</summary>
    private static IEnumerable<Finding> Told(LimeMethodAnswer answer) =>
        answer.Need.Findings.Where(f => f.Code != ReferenceCodes.FromMemory);

    private static SheetRow RowOf(SectionWriter sheet, LimeMethodAnswer answer) =>
        sheet.Row(
            answer.Method.Name,
            answer.Common is { } rate ? $"{Tons(rate)} ton/ac" : "-",
            [
                answer.Method.Name,
                Ph(answer.TargetPh),
                answer.Common is { } common ? Tons(common) : "-",
                answer is { CommonLowest: { } low, CommonHighest: { } high } ? $"{Tons(low)} to {Tons(high)}" : "-",
                SheetText.Standing(answer.Method.Status),
            ],
            [],
            answer.Need
        );

    private static SheetSection Silent(LimeMethodComparison comparison, List<LimeMethod> keptBack)
    {
        var sheet = new SectionWriter("Methods that read this soil but give no rate", 'X');
        var silent = comparison.Answers.Where(a => a.Need.Rate is null).ToList();
        sheet.Remark(silent.Select(a => (a.Method.Name, string.Join(" ", Told(a).Select(f => $"{f.Text} [{f.Code}]")))));
        if (keptBack.Count > 0)
        {
            sheet.Say(
                "Not asked, because their numbers were not yet checked against the publication and they were not named: "
                    + $"{string.Join("; ", keptBack.Select(m => m.Name))}."
            );
        }
        else if (silent.Count == 0)
        {
            sheet.Say("None.");
        }

        return sheet.Close();
    }

    private static string Ph(double ph) => ph.ToString("0.0", CultureInfo.InvariantCulture);

    private static string Tons(ApplicationRate rate) => Amounts.Print(rate.ShortTonsPerAcre, 2);
}
