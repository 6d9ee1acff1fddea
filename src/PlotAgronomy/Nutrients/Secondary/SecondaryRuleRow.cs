using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>One row of a rule: conditions and a rate. A rule printed in steps has several rows, lowest test first.</summary>
internal sealed class SecondaryRuleRow
{
    private static readonly Table<SecondaryRuleRow> Table = new("Nutrients/Data/secondary-rules.csv", r => new SecondaryRuleRow(
        r
    ));

    private SecondaryRuleRow(CsvRow row)
    {
        RuleId = row.Text("rule_id");
        Title = row.Text("title");
        Nutrient = row.Choice<PlantNutrient>("nutrient");
        Crops = row.Text("crops");
        KindIds = row.List("kind_ids");
        Analyte = row.ChoiceOrNull<SoilAnalyte>("analyte");
        Extractants = row.Choices<Extractant>("extractants");
        Unit = row.ChoiceOrNull<SoilTestUnit>("unit");
        ManganeseIndex = row.ChoiceOrNull<PrintedIndex>("manganese_equation") switch
        {
            PrintedIndex.NorthCarolinaA => ManganeseAvailability.NorthCarolinaA,
            PrintedIndex.NorthCarolinaB => ManganeseAvailability.NorthCarolinaB,
            _ => null,
        };
        TestBelow = row.NumberOrNull("test_below");
        TestAtMost = row.NumberOrNull("test_at_most");
        PhAbove = row.NumberOrNull("ph_above");
        OrganicMatterAtMostPercent = row.NumberOrNull("organic_matter_at_most_pct");
        SandyOnly = row.YesOrNo("sandy_only");
        SoilClass = row.ChoiceOrNull<SoilClass>("soil_class");
        RateLow = row.NumberOrNull("rate_low_lb_per_ac");
        RateHigh = row.NumberOrNull("rate_high_lb_per_ac");
        PerPh = row.NumberOrNull("rate_per_ph_lb_per_ac");
        PerTest = row.NumberOrNull("rate_per_test_lb_per_ac");
        Condition = row.ChoiceOrNull<SecondaryCondition>("condition");
        Advice = row.TextOrNull("advice");
        Origin = row.Origin();
    }

    private enum PrintedIndex
    {
        NorthCarolinaA,
        NorthCarolinaB,
    }

    internal static ImmutableArray<SecondaryRuleRow> All => Table.Rows;

    internal string RuleId { get; }

    internal string Title { get; }

    internal PlantNutrient Nutrient { get; }

    internal string Crops { get; }

    internal ImmutableArray<string> KindIds { get; }

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

    internal SecondaryCondition? Condition { get; }

    internal string? Advice { get; }

    internal Origin Origin { get; }

    internal DataStatus Status => Origin.Status;

    internal bool Holds(double test) => !(TestBelow is { } below && test >= below) && !(TestAtMost is { } most && test > most);
}
