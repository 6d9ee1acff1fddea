using System.Globalization;
using PlotAgronomy.Liming;
using PlotAgronomy.Planning;

namespace PlotAgronomy.Sheets;

/// <summary>One soil through every lime method that accepts its reading, on one common basis.</summary>
internal static class LimeSheet
{
    internal static FieldSheet Write(LimeMethodsForPlan compared)
    {
        var comparison = compared.Comparison;
        return SheetEnding.Close(
            $"{compared.Plan.Plot.Name}: one soil, every lime method",
            [Question(compared.Plan, compared.Target, compared.AskedPh, comparison), SideBySide(compared), Silent(compared)],
            compared.Findings,
            told: compared.FindingsOfMethods
        );
    }

    private static SheetSection Question(PlotPlan plan, LimeTarget? target, double? targetPh, LimeMethodComparison comparison)
    {
        var sheet = new SectionWriter("question", "The question");
        sheet.Say(SheetText.Origin(plan.ReportOrNone));
        sheet.Say(SheetText.Acidity(plan.ReportOrNone));
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

    private static string Reason(PlotPlan plan, LimeTarget? target, double? targetPh) =>
        targetPh is not null ? "as asked for."
        : plan.StatedTargetPh is not null ? "as the plan states."
        : target?.SetByAll is { Length: > 1 } several
            ? $"what {string.Join(", ", several.Select(SheetText.Name))}, the most demanding kinds, ask for."
        : target?.SetBy is { } kind ? $"what {SheetText.Name(kind)}, the most demanding kind, asks for."
        : plan.LimeMethod is null ? "common practice, as nothing in the plan says more."
        : "the lowest of the plan's own method.";

    private static SheetSection SideBySide(LimeMethodsForPlan compared)
    {
        var answering = compared.Answering;
        var sheet = new SectionWriter("side-by-side", "Side by side, least lime first");
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
        if (compared.RestsOnMemory)
        {
            sheet.Say(SheetText.FromMemory);
        }

        Spread(
            sheet,
            "apart.same-ph",
            $"how far apart those for pH {Ph(compared.Comparison.TargetPh)} are",
            compared.SpreadForTarget
        );
        Spread(sheet, "apart.all", "how far apart all are, whatever pH they aim at", compared.SpreadOfAll);
        sheet.Say("Each method's own figure, and what to know of it:");
        sheet.Remark(rows.Select(r => (r.Row.Figure!.Code, AboutMethod(r.Answer))));
        return sheet.Close();
    }

    private static void Spread(SectionWriter sheet, string code, string label, LimeSpread? apart)
    {
        if (apart is { } spread)
        {
            sheet.Figure(
                code,
                label,
                new(
                    $"{Tons(spread.Difference)} ton/ac: from {Tons(spread.Least)} to {Tons(spread.Most)}",
                    SheetAmount.Tons(spread.Difference)
                ),
                spread.Line
            );
        }
    }

    private static string AboutMethod(LimeMethodAnswer answer) =>
        string.Join(
            " ",
            new[]
            {
                $"{answer.Need.Rate!.AmountInWords}, {Amounts.Print(answer.Need.Rate.Depth, "in", 1)} deep.",
                answer.WhyNot is { } reason ? $"It cannot be put on the common basis: {reason}" : null,
            }
                .OfType<string>()
                .Concat(answer.Remarks.Select(f => $"{f.Text} [{f.Code}]"))
        );

    private static SheetRow RowOf(SectionWriter sheet, LimeMethodAnswer answer) =>
        sheet.Row(
            FigureCode.Of("method", answer.Method.Id),
            answer.Method.Name,
            answer.Common is { } rate ? new FigureValue($"{Tons(rate)} ton/ac", Amount(answer, rate)) : "-",
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

    private static SheetAmount Amount(LimeMethodAnswer answer, ApplicationRate rate) =>
        answer is { CommonLowest: { } low, CommonHighest: { } high }
            ? SheetAmount.Tons(rate).Within(low.ShortTonsPerAcre, high.ShortTonsPerAcre)
            : SheetAmount.Tons(rate);

    private static SheetSection Silent(LimeMethodsForPlan compared)
    {
        var sheet = new SectionWriter("no-rate", "Methods that read this soil but give no rate");
        var silent = compared.Silent;
        sheet.Remark(silent.Select(a => (a.Method.Name, string.Join(" ", a.Remarks.Select(f => $"{f.Text} [{f.Code}]")))));
        if (!compared.KeptBack.IsEmpty)
        {
            sheet.Say(
                "Not asked, because their numbers were not yet checked against the publication and they were not named: "
                    + $"{string.Join("; ", compared.KeptBack.Select(m => m.Name))}."
            );
        }
        else if (silent.IsEmpty)
        {
            sheet.Say("None.");
        }

        return sheet.Close();
    }

    private static string Ph(double ph) => ph.ToString("0.0", CultureInfo.InvariantCulture);

    private static string Tons(ApplicationRate rate) => Amounts.Print(rate.ShortTonsPerAcre, 2);
}
