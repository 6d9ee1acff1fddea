using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Sheets;

/// <summary>One report through every recommendation system that accepts it.</summary>
internal static class SystemsSheet
{
    internal static FieldSheet Write(PlotPlan plan, CropRow? takenAs, bool includeFromMemory)
    {
        var groups = takenAs is { } row ? [AskedGroup.Of(row, plan)] : AskedGroup.Of(plan);
        var compared = groups.Select(g => SystemsForGroup.Ask(plan, g, includeFromMemory)).ToList();
        var findings = compared.SelectMany(c => c.Answering).SelectMany(a => a.Findings).Distinct().ToList();
        string askedFor = takenAs is null ? "" : ", the row asked for";
        return SheetEnding.Close(
            $"{plan.Plot.Name}: one report, every recommendation system",
            [
                Readings(plan),
                .. compared
                    .GroupBy(c => c.Asked)
                    .Select(alike =>
                        SideBySide(plan, string.Join("; ", alike.Select(c => c.Group.Name)) + askedFor, alike.First())
                    ),
                LeftOut(compared),
            ],
            Finding.InOrder(findings),
            told: findings.Where(f => f.Code == ReferenceCodes.FromMemory)
        );
    }

    private static SheetSection Readings(PlotPlan plan)
    {
        var sheet = new SectionWriter("report", "The report");
        sheet.Say(SheetText.Origin(plan.Report));
        sheet.Remark(
            plan.Report.Readings.Select(r =>
                (SoilWords.For(r.Analyte), $"{SoilWords.Printed(r.PrintedValue, r.Unit)}, {SoilWords.For(r.Extractant)}")
            )
        );
        if (plan.Printed is { } printed)
        {
            var rates = new[] { (PlantNutrient.Phosphate, printed.Phosphate), (PlantNutrient.Potash, printed.Potash) }
                .Where(r => r.Item2 is not null)
                .Select(r => $"{SheetText.Symbol(r.Item1)} {Amounts.Print(r.Item2!.Value, "lb/ac", 1)}")
                .ToList();
            sheet.Say(
                rates.Count == 0
                    ? $"The laboratory's own recommendation for {printed.Crop} names neither P2O5 nor K2O."
                    : $"The laboratory itself recommends {string.Join(" and ", rates)} for {printed.Crop}; the plan uses that "
                        + "first."
            );
        }

        return sheet.Close();
    }

    private static SheetSection SideBySide(PlotPlan plan, string names, SystemsForGroup compared)
    {
        var sheet = new SectionWriter($"side-by-side-{compared.Group.Id}", $"Side by side for {names}");
        sheet.Say(
            plan.Plot.IsCarriedOff
                ? "The crop is carried off the plot."
                : "The crop is only browsed: no system adds what a harvest would carry off."
        );
        if (compared.Answering.IsEmpty)
        {
            sheet.Say("No system accepts this report for it.");
            return sheet.Close();
        }

        var rows = compared.Answering.Select(a => (Answer: a, Row: RowOf(sheet, compared.Group, a))).ToList();
        sheet.Table(
            ["system", "asked for", .. SystemsForGroup.Nutrients.Select(n => $"{SheetText.Symbol(n)}, lb/ac"), "numbers"],
            rows.Select(r => r.Row)
        );
        if (compared.Answering.Any(a => a.RestsOnMemory))
        {
            sheet.Say(SheetText.FromMemory);
        }

        foreach (var nutrient in SystemsForGroup.Nutrients)
        {
            Disagreement(sheet, compared.Group, nutrient, compared.About(nutrient));
        }

        sheet.Say("The idea and the reason of each:");
        sheet.Remark(rows.Select(r => (r.Row.Figure!.Code, $"{r.Answer.System.InWords} {r.Answer.Reasons}")));
        return sheet.Close();
    }

    private static SheetRow RowOf(SectionWriter sheet, AskedGroup group, SystemReply reply) =>
        sheet.Row(
            FigureCode.Of(group.Id, FigureCode.Word(reply.System.Id)),
            reply.System.Name,
            string.Join("; ", SystemsForGroup.Nutrients.Select(n => $"{SheetText.Symbol(n)} {reply.FigureFor(n)}")),
            [reply.System.Name, reply.AskedFor, .. SystemsForGroup.Nutrients.Select(reply.FigureFor), reply.Standing],
            [],
            [.. reply.Answers]
        );

    private static void Disagreement(SectionWriter sheet, AskedGroup group, PlantNutrient nutrient, SystemDisagreement? apart)
    {
        if (apart is null)
        {
            sheet.Say(
                $"{SheetText.Symbol(nutrient)}: fewer than two systems give a rate, so there is nothing to hold against each "
                    + "other."
            );
            return;
        }

        string most = Amounts.Print(apart.Highest.Need.Rate.PoundsPerAcre, 1),
            least = Amounts.Print(apart.Lowest.Need.Rate.PoundsPerAcre, 1),
            gap = Amounts.Print(apart.Difference.PoundsPerAcre, 1);
        sheet.Figure(
            FigureCode.Of(group.Id, FigureCode.Word(nutrient)),
            SheetText.Nutrient(nutrient),
            new(
                $"{gap} lb/ac apart: from {least} ({apart.Lowest.System.Name}) to {most} ({apart.Highest.System.Name})",
                SheetAmount.Rate(apart.Difference)
            ),
            apart.Line
        );
        sheet.Say(apart.Why);
    }

    /// <summary>Every system that stays silent for any group; the group is named where the others have another reason or an
    /// answer.</summary>
    private static SheetSection LeftOut(List<SystemsForGroup> compared)
    {
        var sheet = new SectionWriter("no-answer", "Systems that do not answer, and why");
        var reasons = compared
            .SelectMany(c => c.LeftOut.Select(l => (l.System, l.Why, c.Group.Name)))
            .GroupBy(l => l.System)
            .OrderBy(g => RecommendationSystem.Everything.IndexOf(g.Key))
            .Select(g =>
                (
                    g.Key.Name,
                    string.Join(
                        " ",
                        g.GroupBy(l => l.Why)
                            .Select(same =>
                                same.Count() == compared.Count
                                    ? same.Key
                                    : $"For {string.Join("; ", same.Select(l => l.Name))}: {same.Key}"
                            )
                    )
                )
            )
            .ToList();
        sheet.Remark(reasons);
        if (reasons.Count == 0)
        {
            sheet.Say("None.");
        }

        return sheet.Close();
    }
}
