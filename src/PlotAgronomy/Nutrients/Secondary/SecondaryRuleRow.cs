using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>One row of a rule: conditions and a rate. A rule printed in steps has several rows, lowest test first.</summary>
internal sealed class SecondaryRuleRow
{
    private static readonly Table<SecondaryRuleRow> Table = new("Nutrients/Data/secondary-rules.csv", r => new SecondaryRuleRow(
        r
    ));

    private SecondaryRuleRow(CsvRow row)
    {
        Rule = row.Text("rule");
        Title = row.Text("title");
        Nutrient = row.Choice<PlantNutrient>("nutrient");
        Crops = row.Text("crops");
        Kinds = row.List("kinds");
        Analyte = row.TextOrNull("analyte") is null ? null : row.Choice<SoilAnalyte>("analyte");
        Extractants = row.Choices<Extractant>("extractants");
        Unit = row.TextOrNull("unit") is null ? null : row.Choice<SoilTestUnit>("unit");
        ManganeseIndex = row.TextOrNull("index") switch
        {
            "north-carolina-a" => ManganeseAvailability.NorthCarolinaA,
            "north-carolina-b" => ManganeseAvailability.NorthCarolinaB,
            _ => null,
        };
        TestBelow = row.NumberOrNull("test_below");
        TestAtMost = row.NumberOrNull("test_at_most");
        PhAbove = row.NumberOrNull("ph_above");
        OrganicMatterAtMostPercent = row.NumberOrNull("organic_matter_at_most_pct");
        SandyOnly = row.YesOrNo("sandy_only");
        SoilClass = row.TextOrNull("soil_class") is null ? null : row.Choice<SoilClass>("soil_class");
        RateLow = row.NumberOrNull("rate_low");
        RateHigh = row.NumberOrNull("rate_high");
        PerPh = row.NumberOrNull("per_ph");
        PerTest = row.NumberOrNull("per_test");
        Condition = row.TextOrNull("condition");
        Advice = row.TextOrNull("advice");
        SourceId = row.SourceId();
        Status = row.Status();
    }

    internal static ImmutableArray<SecondaryRuleRow> All => Table.Rows;

    internal string Rule { get; }

    internal string Title { get; }

    internal PlantNutrient Nutrient { get; }

    internal string Crops { get; }

    internal ImmutableArray<string> Kinds { get; }

    internal SoilAnalyte? Analyte { get; }

    internal ImmutableArray<Extractant> Extractants { get; }

    internal SoilTestUnit? Unit { get; }

    /// <summary>The index the limits are for; null when they are for the test itself.</summary>
    internal Func<SoilReading, WaterPh, ManganeseAvailability>? ManganeseIndex { get; }

    internal double? TestBelow { get; }

    internal double? TestAtMost { get; }

    internal double? PhAbove { get; }

    internal double? OrganicMatterAtMostPercent { get; }

    internal bool SandyOnly { get; }

    internal SoilClass? SoilClass { get; }

    internal double? RateLow { get; }

    internal double? RateHigh { get; }

    internal double? PerPh { get; }

    internal double? PerTest { get; }

    internal string? Condition { get; }

    internal string? Advice { get; }

    internal string SourceId { get; }

    internal DataStatus Status { get; }

    internal bool Holds(double test) => !(TestBelow is { } below && test >= below) && !(TestAtMost is { } most && test > most);
}
