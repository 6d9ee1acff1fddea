using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>Makes kinds of their files.</summary>
internal static class PublishedKinds
{
    /// <summary>All published kinds in the order that their files give; it decides ties. Of each file the names are read, the
    /// rest when the kind is asked for.</summary>
    internal static ImmutableArray<ListedKind> List()
    {
        var kinds = KindFile
            .All.Select(f => new { File = f, Names = new KindObservations(f, f.Names) })
            .Select(k => new { Place = k.Names.Need("order"), Kind = Listed(k.File, k.Names) })
            .ToList();
        foreach (var sharing in kinds.GroupBy(k => k.Place.Count()).Where(g => g.Count() > 1))
        {
            throw sharing.Last().Place.Problem("low", $"{sharing.First().Kind.Id} has this place already");
        }

        return [.. kinds.OrderBy(k => k.Place.Count()).Select(k => k.Kind)];
    }

    /// <summary>The kind of one file.</summary>
    /// <exception cref="DataFormatException">A name is missing, a figure is doubled, misspelled or not what it should
    /// be.</exception>
    internal static CropKind From(KindFile file)
    {
        var observations = new KindObservations(file, file.Figures);
        observations.Need("order").Count();
        return From(observations);
    }

    private static ListedKind Listed(KindFile file, KindObservations names) =>
        new(
            file.Id,
            KindNames.Of(
                file.Id,
                names.Need("common-name").Words(),
                names.Need("short-name").Words(),
                names.Need("scientific-name").Words(),
                names.Each("other-name").Select(o => o.Words())
            ),
            () => From(file)
        );

    private static CropKind From(KindObservations kind)
    {
        var published = new CropKind
        {
            Id = kind.KindId,
            CommonName = kind.Need("common-name").Words(),
            ShortName = kind.Need("short-name").Words(),
            ScientificName = kind.Need("scientific-name").Words(),
            OtherNames = [.. kind.Each("other-name").Select(o => o.Words())],
            TaxonomyNote = kind.Find("taxonomy-note")?.Words(),
            Family = kind.Need("family").Words(),
            Group = kind.Need("functional-group").Word<FunctionalGroup>(),
            GrowingSeason = kind.Need("growing-season").Word<GrowingSeason>(),
            LifeCycle = kind.Need("life-cycle").Word<LifeCycle>(),
            LifeCycleNote = kind.Find("life-cycle-note")?.Words(),
            IsChaffy = kind.Need("chaffy").YesOrNo(),
            TagGivesDormantSeed = kind.Find("tag-gives-dormant-seed")?.YesOrNo() ?? false,
            SeedCount = SeedCount.Of(kind),
            BushelWeight = BushelWeight.Of(kind),
            Rates = FullStandRates.Of(kind),
            Depth = PlantingDepth.Of(kind),
            Germination = GerminationTemperature.Of(kind),
            Emergence = DayRange.Of(kind, "emergence"),
            UsableForage = DayRange.Of(kind, "usable-forage"),
            Maturity = DayRange.Of(kind, "maturity"),
            Ph = PhTolerance.Of(kind),
            Drainage = DrainageTolerance.Of(kind),
            Hardiness = Hardiness.Of(kind),
            Nitrogen = NitrogenFixation.Of(kind),
            InoculantGroup = Inoculant(kind.Find("inoculant-group")),
            Seasons = SeasonalUse.Of(kind),
            NutrientNote = KindNote.Of(kind, "nutrient-note"),
            Caution = KindNote.Of(kind, "caution"),
            Hazards = [.. KindHazard.Of(kind)],
            Disagreements = [.. KindNote.Each(kind, "disagreement")],
        };
        kind.Passages("printed-words");
        kind.End();
        return published;
    }

    private static InoculantGroup? Inoculant(KindObservation? named)
    {
        if (named is null)
        {
            return null;
        }

        return InoculantGroup.TryFind(named.Words(), out var group, out string problem)
            ? group
            : throw named.Problem("note", problem);
    }
}
