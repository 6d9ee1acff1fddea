using PlotAgronomy.Seeds;

namespace PlotAgronomy.Sheets;

/// <summary>Seed to weigh out per kind, and what it gives.</summary>
internal static class SeedSection
{
    internal static SheetSection Write(PlotAnswers answers)
    {
        var plan = answers.Plan;
        var seed = answers.Seed.Value;
        var sheet = new SectionWriter("Seed to weigh out", 'S');
        sheet.Say(
            $"For {Amounts.Print(plan.Plot.Area, "ac", 3)}, {SowingMethods.InWords(plan.SowingMethod)}. Weigh each kind by "
                + "itself; rates are bulk seed as it lies in the bag, raised for what is not living seed."
        );
        sheet.RestsOn(seed.Blend);
        sheet.Table(
            ["kind", "lot", "share of a full stand", "live seed, lb/ac", "bulk, lb/ac", "weigh out", "live seeds/ft2"],
            seed.Kinds.Select(sown =>
                sheet.Row(
                    SheetText.Name(sown.Planned.Kind),
                    SheetText.Weight(sown.Weight.ToMass()),
                    [
                        SheetText.Name(sown.Planned.Kind),
                        sown.Planned.Offer.Lot.Label,
                        Amounts.Print(sown.Part.ShareOfFullStand.Chosen, 2),
                        Amounts.Print(sown.Part.LiveRate.PoundsPerAcre, 2),
                        Amounts.Print(sown.Bulk.Bulk.PoundsPerAcre, 2),
                        SheetText.Weight(sown.Weight.ToMass()),
                        Amounts.Print(sown.Part.LiveSeedsPerSquareFoot, 1),
                    ],
                    sown.ShowWork(),
                    sown.Bulk
                )
            )
        );
        var total = seed.Blend.StandTotal;
        sheet.Figure(
            "shares of a full stand, all kinds",
            $"{Amounts.Print(total.Chosen, 2)} ({Amounts.Print(total.Lowest, 2)} to {Amounts.Print(total.Highest, 2)} over the "
                + "published full rates)",
            seed.Crowding
        );
        sheet.Figure("live seeds, all kinds", $"{Amounts.Print(seed.Blend.LiveSeedsPerSquareFoot, 1)} per ft2", seed.Blend);
        sheet.Figure("seed in all", SheetText.Weight(seed.Batch.Total.ToMass()), seed.Blend);
        foreach (var sown in seed.Kinds.Where(s => s.Bulk.ShowBothRates && s.Bulk.CountingGerminationOnly is not null))
        {
            sheet.Say(
                $"{SheetText.Name(sown.Planned.Kind)}: {Rate(sown.Bulk.CountingHardAndDormant!.Value)} lb/ac bulk counts hard or "
                    + $"dormant seed as living, {Rate(sown.Bulk.CountingGerminationOnly!.Value)} lb/ac counts only what "
                    + "germinated."
            );
        }

        return sheet.Close();
    }

    private static string Rate(BulkSeedRate rate) => Amounts.Print(rate.PoundsPerAcre, 2);
}
