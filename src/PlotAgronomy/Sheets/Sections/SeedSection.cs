using PlotAgronomy.Seeds;
using UnitsNet;

namespace PlotAgronomy.Sheets;

/// <summary>Seed to weigh out per kind, and what it gives.</summary>
internal static class SeedSection
{
    /// <summary>The unit of shares of a full stand, one for the stand the kind would get alone.</summary>
    internal const string FullStands = "full stands";

    internal static SheetSection Write(PlotAnswers answers)
    {
        var plan = answers.Plan;
        var sheet = new SectionWriter("seed", "Seed to weigh out", SheetPart.Back);
        if (answers.Seed.State == AnswerState.NoneNeeded)
        {
            sheet.Say("No seed is weighed out now, see the verdict.");
            HeldSeed.SayKept(sheet, answers);
            return sheet.Close();
        }

        if (!answers.Seed.TryGet(out var seed))
        {
            SayOpen(sheet, answers);
            return sheet.Close();
        }

        sheet.Say(
            $"For {Ground(plan.Plot.Area, seed.Kinds[0].Ground)}, {SowingMethods.Words[seed.SownBy]}. Bulk is seed as it lies in "
                + "the bag, raised for what is not living; shares are of a full stand."
        );
        sheet.RestsOn(seed.Blend);
        sheet.Table(
            ["kind", "share", "live, lb/ac", "bulk, lb/ac", "weigh out", "seeds/ft2"],
            seed.Kinds.Select(sown =>
                sheet.Row(
                    FigureCode.Of("seed", sown.Planned.Kind.Id, "weight"),
                    SheetText.Name(sown.Planned.Kind),
                    new(SheetText.Weight(sown.Weight), SheetAmount.Weight(sown.Weight)),
                    [
                        SheetText.Name(sown.Planned.Kind),
                        Amounts.Print(sown.Part.ShareOfFullStand.Chosen, 2),
                        Amounts.Print(sown.Part.LiveRate.PoundsPerAcre, 2),
                        Amounts.Print(sown.Rate.PoundsPerAcre, 2),
                        SheetText.Weight(sown.Weight),
                        Amounts.Print(sown.Part.LiveSeedsPerSquareFoot, 1),
                    ],
                    sown.ShowWork(),
                    sown.Bulk
                )
            )
        );
        foreach (var sown in seed.KindsWithBothRates)
        {
            sheet.Say(
                $"{SheetText.Name(sown.Planned.Kind)}: {Rate(sown.Bulk.CountingHardAndDormant!.Value)} lb/ac bulk counts hard or "
                    + $"dormant seed as living, {Rate(sown.Bulk.CountingGerminationOnly!.Value)} lb/ac counts only what "
                    + "germinated."
            );
        }

        HeldSeed.SayKept(sheet, answers);
        return sheet.Close();
    }

    /// <summary>All kinds together.</summary>
    internal static SheetSection? WriteWorking(PlotAnswers answers)
    {
        if (!answers.Seed.TryGet(out var seed))
        {
            return null;
        }

        var sheet = new SectionWriter("seed-in-all", "Seed in all", SheetPart.Work);
        sheet.RestsOn(seed.Blend);
        var total = seed.Blend.StandTotal;
        sheet.Figure(
            "seed.all.share",
            "shares of a full stand, all kinds",
            new(
                $"{Amounts.Print(total.Chosen, 2)} ({Amounts.Print(total.Lowest, 2)} to "
                    + $"{Amounts.Print(total.Highest, 2)} over the published full rates)",
                SheetAmount.Number(total.Chosen, FullStands).Within(total.Lowest, total.Highest)
            ),
            seed.Crowding
        );
        double count = seed.Blend.LiveSeedsPerSquareFoot;
        sheet.Figure(
            "seed.all.count",
            "live seeds, all kinds",
            new($"{Amounts.Print(count, 1)} per ft2", SheetAmount.Number(count, "seeds/ft2")),
            seed.Blend
        );
        var all = seed.InAll;
        sheet.Figure("seed.all.weight", "seed in all", new(SheetText.Weight(all), SheetAmount.Weight(all)), seed.Blend);
        return sheet.Close();
    }

    /// <summary>Nothing is weighed out before what is asked is answered.</summary>
    internal static void SayOpen(SectionWriter sheet, PlotAnswers answers)
    {
        sheet.Say("No seed is weighed out yet; the plan leaves open:");
        foreach (var question in answers.Seed.Questions)
        {
            sheet.Say(question.Text);
        }
    }

    /// <summary>The plot, and what the passes cover beside it where that shows in the figure.</summary>
    private static string Ground(Area plot, Area sown) =>
        Amounts.Print(plot, "ac", 3) is var alone && Amounts.Print(sown, "ac", 3) is var all && alone == all
            ? alone
            : $"{all}: the {alone} of the plot, and what the passes cover beside it";

    private static string Rate(BulkSeedRate rate) => Amounts.Print(rate.PoundsPerAcre, 2);
}
