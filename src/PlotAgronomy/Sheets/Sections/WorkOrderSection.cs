using System.Collections.Immutable;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Liming;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Planning;
using PlotAgronomy.Reference;
using PlotAgronomy.Spreading;

namespace PlotAgronomy.Sheets;

/// <summary>The order of work for the planting method, with what to do between passes (common practice).</summary>
internal static class WorkOrderSection
{
    internal static SheetSection Write(PlotAnswers answers)
    {
        var sheet = new SectionWriter("order-of-work", "Order of work");
        sheet.Step(
            answers.Verdict.State != AnswerState.NoneNeeded && answers.Verdict.Told.Upkeep is { } stand
                ? Lime(answers).Concat(UpkeepSteps.Of(answers, stand, Products(Bought(answers))))
            : answers.Seed.State == AnswerState.NoneNeeded ? Unsown(answers).Concat(Tests(answers)).Append(WriteDown)
            : Before(answers).Concat(Sowing(answers)).Concat(After(answers))
        );
        return sheet.Close();
    }

    private const string WriteDown = "Write down what was really spread, the day, and the rain that followed.";

    /// <summary>Lime and fertilizer where nothing is sown.</summary>
    private static IEnumerable<string> Unsown(PlotAnswers answers)
    {
        foreach (string step in Lime(answers))
        {
            yield return step;
        }

        if (Products(Bought(answers)) is { } products)
        {
            yield return $"Spread the fertilizer, {products}, when the crop it was printed for is sown or grows, never on frozen "
                + "ground.";
        }
    }

    /// <summary>The test that decides on what waits for it.</summary>
    private static IEnumerable<string> Tests(PlotAnswers answers)
    {
        if (answers.Verdict.State == AnswerState.NoneNeeded || answers.Verdict.Told is not { Expected: { } outlook } verdict)
        {
            yield break;
        }

        if (!verdict.WithinReach.IsEmpty && outlook.TestBeforeSowingOn is { } day)
        {
            yield return $"Test the soil about {SheetText.Date(day)}. It lets in {VerdictSection.Needs(verdict.WithinReach)}.";
        }

        if (!verdict.OutOfReach.IsEmpty)
        {
            yield return $"Test the soil about {SheetText.Date(outlook.FullEffectOn)}, when the lime has about its full effect. "
                + $"It lets in {VerdictSection.Needs(verdict.OutOfReach)}, in their season.";
        }
    }

    private static IEnumerable<string> Before(PlotAnswers answers)
    {
        var plan = answers.Plan;
        foreach (string step in answers.CoverSteps)
        {
            yield return step;
        }

        foreach (string step in answers.Lime.Told.IsLate ? [] : Lime(answers))
        {
            yield return step;
        }

        foreach (string step in Tests(answers))
        {
            yield return step;
        }

        if (plan.Plot.Cover is GroundCover.SmotherCrop or GroundCover.SmallGrain && plan.Method == PlantingMethod.TilledAndPacked)
        {
            string crop = plan.Plot.CoverKind is { } cover ? SheetText.Name(cover).ToLowerInvariant() : "the standing crop";
            yield return $"Mow {crop} before it sets seed and let it wilt.";
        }

        string? fertilizer = Fertilizer(answers);
        switch (plan.Method)
        {
            case null:
                if (fertilizer is not null)
                {
                    yield return $"Spread the fertilizer, {fertilizer}.";
                }

                break;
            case PlantingMethod.TilledAndPacked:
                yield return fertilizer is not null
                    ? $"Spread the fertilizer, {fertilizer}, and work it in with the last tillage."
                    : "Till a fine seedbed.";
                yield return "Roll the seedbed firm: a boot sinks no deeper than its sole.";
                yield return "Inside the kinds' planting dates, wait for a real rain in the forecast and sow just ahead of it.";
                break;
            case PlantingMethod.FrostSeeded:
                yield return "Wait for a dry morning on frozen, snow-free ground that will thaw by noon.";
                break;
            case PlantingMethod.Drilled:
                yield return fertilizer is not null
                    ? $"Spread the fertilizer, {fertilizer}, before drilling."
                    : "Check that the ground carries the drill.";
                break;
            default:
                yield return fertilizer is not null
                    ? $"Spread the fertilizer, {fertilizer}, just before the seed, on dry leaves."
                    : "Check that the standing crop is dry.";
                yield return "Wait for a real rain in the forecast and sow just ahead of it.";
                break;
        }
    }

    /// <summary>The dressings of the first day; later ones stand in the section on lime.</summary>
    private static IEnumerable<string> Lime(PlotAnswers answers)
    {
        var lime = answers.Lime.Told;
        if (lime.Order.OrNull() is not { } order)
        {
            if (lime is { Printed: not null, Rate.State: AnswerState.Open })
            {
                yield return "Spread no lime before the laboratory has said of which its rate is, see there; it goes on before "
                    + "the last tillage.";
            }

            yield break;
        }

        string deep = answers.Plan.TillageDepth is { } depth ? $" {Amounts.Print(depth, "in", 0)} deep" : "";
        foreach (var dressing in order.Dressings.Where(d => d.MonthsAfterFirst == 0))
        {
            string when = dressing.On is { } on ? $" ({SheetText.Date(on)})" : "";
            string part = order.Dressings.Length > 1 ? $", dressing {Amounts.Print(dressing.Number, 0)}" : "";
            string what = $"{SheetText.Weight(dressing.Mass)} of {lime.Offer!.Item.Name}{part}";
            yield return lime.IsLate ? $"Spread {what}{when}: it comes after the seed and serves the next planting."
            : lime.Placement == LimePlacement.WorkedIn ? $"Spread {what}{when} and work it in{deep}."
            : $"Spread {what} on the surface{when}; it works down slowly.";
        }
    }

    private static IEnumerable<string> Sowing(PlotAnswers answers)
    {
        bool worked = answers.Plan.Method == PlantingMethod.TilledAndPacked;
        foreach (var (action, seeding) in answers.SowingSteps)
        {
            switch (action)
            {
                case SeedingAction.Spread when seeding is { } pass:
                    yield return answers.Plan.Method == PlantingMethod.Drilled
                        ? $"Drill {pass.Names}: {SheetText.Weight(pass.Load)} ({SheetText.Rate(pass.Rate)}){Depth(pass)}."
                        : $"Pass {Amounts.Print(pass.Number, 0)}: spread {pass.Names}: {SheetText.Weight(pass.Load)} "
                            + $"({SheetText.Rate(pass.Rate)}).";
                    break;
                case SeedingAction.Cover when worked:
                    yield return "Drag or disk lightly to cover the large seed, then firm the ground again.";
                    break;
                case SeedingAction.Press when worked:
                    yield return "Roll once more to press the small seed in; do not cover it.";
                    break;
            }
        }
    }

    private static IEnumerable<string> After(PlotAnswers answers)
    {
        switch (answers.Plan.Method)
        {
            case PlantingMethod.BroadcastThenRolled:
                yield return "Roll the standing crop down over the seed the same day.";
                break;
            case PlantingMethod.BroadcastThenMown:
                yield return "Mow the standing growth high over the seed the same day; the clippings are its cover.";
                break;
            case PlantingMethod.FrostSeeded:
                yield return "Do not work the ground: freezing and thawing draw the seed in.";
                if (answers.Plan.Plot is { Cover: GroundCover.SmallGrain })
                {
                    yield return "In spring clip or graze the standing grain whenever it shades the seedlings.";
                }

                yield return Fertilizer(answers) is { } products
                    ? $"Spread the fertilizer, {products}, only after green-up, never on frozen ground."
                    : "Spread nothing but seed on frozen ground.";
                break;
        }

        foreach (string step in answers.Lime.Told.IsLate ? Lime(answers) : [])
        {
            yield return step;
        }

        foreach (string step in LaterNitrogen(answers))
        {
            yield return step;
        }

        yield return WriteDown;
    }

    private static ImmutableArray<PurchaseLine> Bought(PlotAnswers answers) =>
        answers.Fertilizer.Told.Purchase.OrNull()?.Lines ?? [];

    /// <summary>The products for the sowing with their weights; null when none is spread.</summary>
    private static string? Fertilizer(PlotAnswers answers) => Products(answers.Fertilizer.Told.AtSowing);

    private static string? Products(ImmutableArray<PurchaseLine> lines)
    {
        string apart = lines.Length > 1 ? ", each by itself" : "";
        return lines.IsEmpty
            ? null
            : string.Join(", ", lines.Select(l => $"{SheetText.Weight(l.Spread)} of {l.Product.Name}")) + apart;
    }

    /// <summary>Nitrogen that waits for the stand.</summary>
    private static IEnumerable<string> LaterNitrogen(PlotAnswers answers) =>
        Products(answers.Fertilizer.Told.Later) is { } later
            ?
            [
                $"Keep {later}, for the stand, on dry leaves before rain. Nitrogen "
                    + $"{string.Join(", then ", answers.Fertilizer.Told.LaterNitrogen.Value.Doses.Select(d => $"{Dose(d)} {d.When}"))}.",
            ]
            : [];

    internal static string Dose(NitrogenDose dose) =>
        $"{Amounts.Print(dose.Low.PoundsPerAcre, 0)} to {Amounts.Print(dose.High, "lb/ac", 0)}";

    private static string Depth(SowingPass pass) =>
        pass.Depth is var (shallowest, deepest)
            ? $", {Amounts.Print(shallowest, "in", 2)} to {Amounts.Print(deepest, "in", 2)} deep"
            : "";
}
