using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>Puts the published kinds together from their tables: one table a group of figures, joined by kind id.</summary>
internal static class KindTable
{
    internal static ImmutableArray<CropKind> Read()
    {
        var counts = One("Seeds/Data/counts.csv", SeedCount.FromRow);
        var bushels = One("Seeds/Data/bulk-densities.csv", BushelWeight.FromRow);
        var rates = One("Seeds/Data/rates.csv", FullStandRates.FromRow);
        var depths = One("Seeds/Data/depths.csv", PlantingDepth.FromRow);
        var temperatures = One("Seeds/Data/germination.csv", GerminationTemperature.FromRow);
        var emergence = One("Seeds/Data/emergence.csv", r => DayRange.FromRow(r, "low_days", "high_days"));
        var usable = One("Seeds/Data/growth.csv", r => DayRange.FromRow(r, "usable_low_days", "usable_high_days"));
        var maturity = One("Seeds/Data/growth.csv", r => DayRange.FromRow(r, "maturity_low_days", "maturity_high_days"));
        var ph = One("Seeds/Data/soil-ph.csv", PhTolerance.FromRow);
        var drainage = One("Seeds/Data/drainage.csv", DrainageTolerance.FromRow);
        var hardiness = One("Seeds/Data/hardiness.csv", Hardiness.FromRow);
        var nitrogen = One("Seeds/Data/nitrogen.csv", NitrogenFixation.FromRow);
        var inoculants = One("Seeds/Data/nitrogen.csv", r => InoculantGroup.Find(r.Text("inoculant_group")));
        var seasons = One("Seeds/Data/seasons.csv", SeasonalUse.FromRow);
        var nutrients = One("Seeds/Data/nutrient-notes.csv", KindNote.FromRow);
        var cautions = One("Seeds/Data/cautions.csv", KindNote.FromRow);
        var hazards = Many("Seeds/Data/hazards.csv", KindHazard.FromRow);
        var dormant = CsvTable.Embedded("Seeds/Data/dormancy-kinds.csv").Rows.Select(r => r.Text("kind_id")).ToHashSet();
        var disagreements = Many("Seeds/Data/disagreements.csv", KindNote.FromRow);

        return [.. CsvTable.Embedded("Seeds/Data/kinds.csv").Rows.Select(row => Join(row, row.Text("id")))];

        CropKind Join(CsvRow row, string id) =>
            new()
            {
                Id = id,
                CommonName = row.Text("common_name"),
                ShortName = row.Text("short_name"),
                ScientificName = row.Text("scientific_name"),
                OtherNames = [.. (row.TextOrNull("other_names") ?? "").Split('|', StringSplitOptions.RemoveEmptyEntries)],
                TaxonomyNote = row.TextOrNull("taxonomy_note"),
                Family = row.Text("family"),
                Group = row.Choice<FunctionalGroup>("functional_group"),
                GrowingSeason = row.Choice<GrowingSeason>("growing_season"),
                LifeCycle = row.Choice<LifeCycle>("life_cycle"),
                LifeCycleNote = row.TextOrNull("life_cycle_note"),
                IsChaffy = row.Text("chaffy") == "yes",
                TagGivesDormantSeed = dormant.Contains(id),
                SeedCount = counts.GetValueOrDefault(id),
                BushelWeight = bushels.GetValueOrDefault(id),
                Rates = rates.GetValueOrDefault(id),
                Depth = depths.GetValueOrDefault(id),
                Germination = temperatures.GetValueOrDefault(id),
                Emergence = emergence.GetValueOrDefault(id),
                UsableForage = usable.GetValueOrDefault(id),
                Maturity = maturity.GetValueOrDefault(id),
                Ph = ph.GetValueOrDefault(id),
                Drainage = drainage.GetValueOrDefault(id),
                Hardiness = hardiness.GetValueOrDefault(id),
                Nitrogen = nitrogen.GetValueOrDefault(id),
                InoculantGroup = inoculants.GetValueOrDefault(id),
                Seasons = seasons.GetValueOrDefault(id),
                NutrientNote = nutrients.GetValueOrDefault(id),
                Caution = cautions.GetValueOrDefault(id),
                Hazards = [.. hazards[id]],
                Disagreements = [.. disagreements[id]],
            };
    }

    private static Dictionary<string, T> One<T>(string table, Func<CsvRow, T> read) =>
        CsvTable.Embedded(table).Rows.ToDictionary(r => r.Text("kind_id"), read);

    private static ILookup<string, T> Many<T>(string table, Func<CsvRow, T> read) =>
        CsvTable
            .Embedded(table)
            .Rows.SelectMany(r => r.Text("kind_id").Split('|').Select(id => (Id: id, Item: read(r))))
            .ToLookup(p => p.Id, p => p.Item);
}
