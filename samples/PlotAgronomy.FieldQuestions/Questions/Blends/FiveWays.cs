using PlotAgronomy.Blends;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.FieldQuestions.Blends;

/// <summary>Oats, crimson clover and radish for three quarters of an acre. The same blend goes around in five notes; the pails
/// are weighed on a bathroom scale, the mixer holds 30 pounds.</summary>
internal static class FiveWays
{
    private static readonly Area Plot = Area.FromAcres(0.75);

    internal static void Answer(TextWriter output)
    {
        var radish = Offer.InBags(Lot("daikon radish", 94), Mass.FromPounds(5), 17.50m);
        var blend = Blend.FromSharesOfFullStand(
            (Bought("winter oats", germination: 92, 0.45m), 0.35),
            (Bought("crimson clover", germination: 88, 2.10m), 0.45),
            (BlendComponent.FromOffer(radish, fullRate: PureLiveSeedRate.BroadcastPoundsPerAcre(12)), 0.20));
        var parts = blend.Parts;
        double seeds = blend.LiveSeedsPerSquareFoot;
        var weights = parts.Select(p => (p.Component, p.ShareOfBulkWeight));
        var pail = Mass.FromPounds(2.5);
        var shown = blend.WeighFor(Plot).Lines.Select(l => (l.Component, l.Weight.ToMass() + pail));
        (string Note, Blend Blend)[] notes =
        [
            ("shares of a full stand", blend),
            ("pounds of living seed", Blend.FromLiveRates([.. parts.Select(p => (p.Component, p.LiveRate))])),
            ("pounds out of the bags", Blend.FromBulkRates([.. parts.Select(p => (p.Component, p.BulkRate))])),
            ("parts of the weight", Blend.FromWeightShares(blend.BulkRate, [.. weights])),
            ("parts of the seeds", Blend.FromSeedShares(seeds, [.. parts.Select(p => (p.Component, p.ShareOfLiveSeeds))])),
            ("what the scale showed, pail and all", Blend.FromHomeScale(Plot, pail, [.. shown])),
        ];
        foreach (var (note, stated) in notes)
        {
            output.WriteLine($"By {note}: {Weights(stated.WeighFor(Plot))}.");
        }

        output.WriteLine($"{Amounts.Print(blend.PureLiveSeed, 0)} of it is living seed, {Amounts.Print(seeds, 0)} to a "
            + "square foot. Thrown thin into a worn stand, a twentieth of it, "
            + $"{Amounts.Print(blend.Times(0.05).EmptySquareFeet, 0)} of the square feet get no seed.");
        var mixer = blend.WeighBatch(BulkSeedMass.FromPounds(30));
        output.WriteLine($"One filling of the mixer covers {Amounts.Print(mixer.Area, "ac", 2)}: {Weights(mixer)}.");
        var step = Mass.FromPounds(0.2);
        output.Warn(blend.Findings.Concat(BatchSpread.CheckWeighing(mixer, step)));
        output.WriteLine($"To the next step of the scale: {Weights(mixer.RoundUpTo(step))}.");
    }

    private static BlendComponent Bought(string kind, double germination, decimal pricePerPound) =>
        BlendComponent.FromOffer(Offer.ByThePound(Lot(kind, germination), pricePerPound), SowingMethod.Broadcast);

    private static SeedLot Lot(string kind, double germination) => new()
    {
        Label = kind,
        Kind = KindCatalog.Standard.Find(kind),
        Analysis = SeedAnalysis.FromFractions(Fraction.FromPercent(98), Fraction.FromPercent(germination)),
    };

    private static string Weights(BlendBatch batch) =>
        string.Join(", ", batch.Lines.Select(l => $"{l.Component.Kind.ShortName} {Amounts.Print(l.Weight.ToMass(), "lb", 2)}"));
}
