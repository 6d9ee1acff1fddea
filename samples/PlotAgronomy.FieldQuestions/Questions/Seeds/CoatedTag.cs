using PlotAgronomy.Seeds;

namespace PlotAgronomy.FieldQuestions.Seeds;

/// <summary>A bag of coated clover for a third of an acre: what the tag hides, whether its weeds are what a laboratory found, and
/// whether the seed wants inoculant.</summary>
internal static class CoatedTag
{
    private const string Tag = """
        Kind: Ladino clover
        Pure seed 64.50 %   Inert matter 1.00 %   Coating 34.00 %
        Other crop 0.30 %   Weed seed 0.20 %
        Germination 80 %    Hard seed 10 %        Test date 07/2025
        Noxious weed seeds per lb: 72 dock
        """;

    internal static void Answer(TextWriter output)
    {
        var read = SeedTag.Read(Tag);
        if (read.Tag is not { } tag)
        {
            output.WriteLine($"The tag cannot be read: {read}.");
            return;
        }

        output.Warn(read.Findings);

        var lot = SeedLot.FromTag(tag, tag.Components[0], "coated ladino");
        var maker = SeedAnalysis.CoatingFromBuildUp(poundsOfCoatingPerPoundOfSeed: 0.5);
        output.WriteLine($"The tag's coat is {Amounts.Print(tag.Coating, 1)} of the weight; half a pound laid on each pound "
            + $"of seed, as the folder says, would be {Amounts.Print(maker, 1)}.");

        var plot = Area.FromAcres(0.33);
        var seeding = lot.BulkRate(PureLiveSeedRate.BroadcastPoundsPerAcre(4));
        output.Tell(seeding);
        var weigh = seeding.Bulk.Over(plot);
        output.WriteLine($"For {Amounts.Print(plot, "ac", 2)}: {Amounts.Print(weigh.ToMass(), "lb", 2)} out of the bag.");

        // The laboratory looked through fifty grams and found fourteen docks.
        var dock = tag.Noxious[0];
        double labelled = NoxiousWeed.SeedsInSample(dock.SeedsPerPound, Mass.FromGrams(50));
        int most = NoxiousWeed.MostWithinTolerance((int)Math.Round(labelled, MidpointRounding.ToEven));
        string agrees = most >= 14 ? "agree with" : "are too many for";
        output.WriteLine($"The label means {Amounts.Print(labelled, 1)} {dock.Name} in fifty grams; fourteen found {agrees} it "
            + $"(at most {Amounts.Print(most, 0)}).");

        var inoculant = InoculantNeed.For(lot, weigh);
        output.Tell(inoculant);
        output.WriteLine($"Ask for {inoculant.Group}, and sow within {Amounts.Print(inoculant.PlantWithin, "h", 0)} of mixing.");
    }
}
