using System.Collections.Immutable;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Planning;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Sheets;

/// <summary>One report through every recommendation system that accepts it.</summary>
internal static class SystemsSheet
{
    internal static FieldSheet Write(SystemsForPlan compared) =>
        SheetEnding.Close(
            $"{compared.Plan.Plot.Name}: one report, every recommendation system",
            [
                Readings(compared.Plan),
                .. compared.Alike.Select(alike => SideBySide(compared, alike)),
                .. WouldAnswer(compared),
                LeftOut(compared),
            ],
            compared.Findings,
            told: compared.FindingsFromMemory
        );

    private static SheetSection Readings(PlotPlan plan)
    {
        var sheet = new SectionWriter("report", "The report");
        sheet.Say(SheetText.Origin(plan.ReportOrNone));
        sheet.Remark(plan.ReportOrNone.Readings.Select(r => (SoilWords.Analytes[r.Analyte], $"{r.Printed}, {r.ExtractedBy}")));
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

    private static SheetSection SideBySide(SystemsForPlan compared, ImmutableArray<SystemsForKinds> alike)
    {
        var first = alike[0];
        string id = Id(compared, first);
        string askedFor = compared.AskedRow is null ? "" : ", the row asked for";
        var sheet = new SectionWriter(
            $"side-by-side-{id}",
            $"Side by side for {string.Join("; ", alike.Select(k => Name(compared, k)))}{askedFor}"
        );
        sheet.Say(
            compared.Plan.Plot.IsCarriedOff
                ? "The crop is carried off the plot."
                : "The crop is only browsed: no system adds what a harvest would carry off."
        );
        if (first.Answering.IsEmpty)
        {
            sheet.Say("No system accepts this report for it.");
            return sheet.Close();
        }

        var rows = first.Answering.Select(a => (Answer: a, Row: RowOf(sheet, id, a))).ToList();
        sheet.Table(
            [
                "system",
                "asked for",
                $"{SheetText.Symbol(PlantNutrient.Phosphate)}, lb/ac",
                $"{SheetText.Symbol(PlantNutrient.Potash)}, lb/ac",
                "numbers",
            ],
            rows.Select(r => r.Row)
        );
        if (first.RestsOnMemory)
        {
            sheet.Say(SheetText.FromMemory);
        }

        Disagreements(sheet, id, first);
        Converted(sheet, id, first);
        sheet.Say("The idea and the reason of each:");
        sheet.Remark(rows.Select(r => (r.Row.Figure!.Code, $"{r.Answer.System.InWords} {SystemWords.Reasons(r.Answer)}")));
        return sheet.Close();
    }

    private static SheetRow RowOf(SectionWriter sheet, string id, SystemReply reply)
    {
        string phosphate = SystemWords.Figure(reply.Phosphate),
            potash = SystemWords.Figure(reply.Potash);
        return sheet.Row(
            FigureCode.Of(id, FigureCode.Word(reply.System.Id)),
            reply.System.Name,
            $"{SheetText.Symbol(PlantNutrient.Phosphate)} {phosphate}; {SheetText.Symbol(PlantNutrient.Potash)} {potash}",
            [reply.System.Name, SystemWords.AskedFor(reply), phosphate, potash, SheetText.Standing(reply.Status)],
            [],
            [.. reply.Answers]
        );
    }

    private static void Disagreements(SectionWriter sheet, string id, SystemsForKinds kinds)
    {
        var alone = new List<string>();
        foreach (
            var (nutrient, apart) in new[] { (PlantNutrient.Phosphate, kinds.Phosphate), (PlantNutrient.Potash, kinds.Potash) }
        )
        {
            if (apart is null)
            {
                alone.Add(SheetText.Symbol(nutrient));
            }
            else
            {
                Disagreement(sheet, id, nutrient, apart);
            }
        }

        if (alone.Count > 0)
        {
            sheet.Say(
                $"{string.Join(" and ", alone)}: fewer than two systems give a rate for the reading as it is printed, so there "
                    + "is nothing to hold against each other."
            );
        }
    }

    /// <summary>Who else would give a rate, and by which equation the reading was brought to its test.</summary>
    private static void Converted(SectionWriter sheet, string id, SystemsForKinds kinds)
    {
        if (kinds.Converted is not { IsEmpty: false } replies)
        {
            return;
        }

        sheet.Say("By a converted reading, only to see how far apart they lie; buy nothing by it:");
        foreach (var converted in replies)
        {
            sheet.Figure(
                FigureCode.Of(
                    id,
                    $"converted-{FigureCode.Word(converted.System.Id)}-{FigureCode.Word(converted.Reply.Nutrient)}"
                ),
                $"{converted.System.Name}, {SheetText.Symbol(converted.Reply.Nutrient)}",
                new(
                    $"{SystemWords.Figure(converted.Reply)} lb/ac, from {converted.Conversion.Converted} by {converted.By.Title}",
                    SheetAmount.Rate(converted.Reply.Need!.Rate)
                ),
                converted.Reply.Answer,
                converted.Conversion
            );
        }
    }

    private static void Disagreement(SectionWriter sheet, string id, PlantNutrient nutrient, SystemDisagreement apart)
    {
        string most = Amounts.Print(apart.Highest.Need.Rate.PoundsPerAcre, 1),
            least = Amounts.Print(apart.Lowest.Need.Rate.PoundsPerAcre, 1),
            gap = Amounts.Print(apart.Difference.PoundsPerAcre, 1);
        sheet.Figure(
            FigureCode.Of(id, FigureCode.Word(nutrient)),
            SheetText.Nutrient(nutrient),
            new(
                $"{gap} lb/ac apart: from {least} ({apart.Lowest.System.Name}) to {most} ({apart.Highest.System.Name})",
                SheetAmount.Rate(apart.Difference)
            ),
            apart.Line
        );
        sheet.Say(apart.Why);
    }

    /// <summary>What systems that take this test would need to know.</summary>
    private static IEnumerable<SheetSection> WouldAnswer(SystemsForPlan compared)
    {
        var sheet = new SectionWriter("would-answer", "Systems that would answer if they were told more");
        var would = compared.WouldAnswer.ToHashSet();
        sheet.Remark(compared.LeftOut.Where(l => would.Contains(l.System)).Select(l => Silent(compared, l)));
        return would.Count == 0 ? [] : [sheet.Close()];
    }

    /// <summary>Every system that stays silent for any kinds; they are named where the others have another reason or an
    /// answer.</summary>
    private static SheetSection LeftOut(SystemsForPlan compared)
    {
        var sheet = new SectionWriter("no-answer", "Systems that do not answer, and why");
        var would = compared.WouldAnswer.ToHashSet();
        var silent = compared.LeftOut.Where(l => !would.Contains(l.System)).Select(l => Silent(compared, l)).ToList();
        sheet.Remark(silent);
        if (silent.Count == 0)
        {
            sheet.Say("None.");
        }

        return sheet.Close();
    }

    private static (string Name, string Why) Silent(
        SystemsForPlan compared,
        (RecommendationSystem System, ImmutableArray<(SystemsForKinds For, SystemSilence Silence)> Silences) left
    ) =>
        (
            left.System.Name,
            string.Join(
                " ",
                left.Silences.GroupBy(s => SystemWords.Why(s.Silence))
                    .Select(same =>
                        same.Count() == compared.Kinds.Length
                            ? same.Key
                            : $"For {string.Join("; ", same.Select(s => Name(compared, s.For)))}: {same.Key}"
                    )
            )
        );

    /// <summary>The first kind or, where a row was asked for, that.</summary>
    private static string Id(SystemsForPlan compared, SystemsForKinds kinds) =>
        compared.AskedRow is { } row ? FigureCode.Word(CropRows.WordsFor(row)) : kinds.Kinds[0].Id;

    /// <summary>The kinds or, where a row was asked for, its words.</summary>
    private static string Name(SystemsForPlan compared, SystemsForKinds kinds) =>
        compared.AskedRow is { } row ? CropRows.WordsFor(row) : string.Join("; ", kinds.Kinds.Select(SheetText.Name));
}
