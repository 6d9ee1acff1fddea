using System.Collections.Immutable;
using PlotAgronomy.Blends;
using PlotAgronomy.Seeds;
using UnitsNet;

namespace PlotAgronomy.PlanFiles;

/// <summary>Reads a store's ready blend from its tag.</summary>
internal static class StoreBlendReader
{
    internal static StoreBag? Read(PlanObject offer, PlantingMethod? method)
    {
        var rows = offer.Objects("components").ToList();
        var components = rows.Select(Component).OfType<TagComponent>().ToImmutableArray();
        var otherCrop = offer.Amount<Fraction>("otherCrop", Amounts.TryReadPercent) ?? Fraction.Zero;
        var inert = offer.Amount<Fraction>("inert", Amounts.TryReadPercent) ?? Fraction.Zero;
        var weed = offer.Amount<Fraction>("weed", Amounts.TryReadPercent) ?? Fraction.Zero;
        var coating = offer.Amount<Fraction>("coating", Amounts.TryReadPercent) ?? Fraction.Zero;
        var package = offer.PositiveAmount<Mass>("package", Amounts.TryReadMass, m => m.Pounds);
        var claimed = offer.PositiveAmount<Area>("claimedArea", Amounts.TryReadArea, a => a.Acres);
        if (
            components.Length < rows.Count
            || components.IsEmpty
            || package is not Mass net
            || claimed is not Area area
            || method is not PlantingMethod planted
            || offer.Text("name") is not { } name
            || offer.Money("price") is not decimal price
            || offer.Date("tested") is not DateOnly tested
        )
        {
            return null;
        }

        var bag = new StoreBag
        {
            Label = name,
            NetWeight = net,
            Price = price,
            ClaimedArea = area,
            Tag = new SeedTag
            {
                Components = components,
                OtherCrop = otherCrop,
                Inert = inert,
                Weed = weed,
                Coating = coating,
                NetWeight = net,
                TestMonth = TestMonth.FromYearAndMonth(tested.Year, tested.Month),
                IsTreated = offer.Flag("treated") == true,
            },
        };
        return offer.Try("components", () => BagOrPlainSeed.Compare(bag, PlotPlan.SowingMethodOf(planted), [])) is null
            ? null
            : bag;
    }

    private static TagComponent? Component(PlanObject row)
    {
        var kind = KindReader.Read(row, "kind");
        var pure = row.Amount<Fraction>("pureSeed", Amounts.TryReadPercent);
        var germination = row.Amount<Fraction>("germination", Amounts.TryReadPercent);
        var hard = row.Amount<Fraction>("hardSeed", Amounts.TryReadPercent) ?? Fraction.Zero;
        var dormant = row.Amount<Fraction>("dormantSeed", Amounts.TryReadPercent) ?? Fraction.Zero;
        TestMonth? tested = row.Date("tested") is DateOnly day ? TestMonth.FromYearAndMonth(day.Year, day.Month) : null;
        return
            kind is not null
            && pure is Fraction purity
            && germination is Fraction germinating
            && row.Try("pureSeed", () => SeedAnalysis.FromFractions(purity, germinating, hard, dormant)) is { } analysis
            ? new TagComponent
            {
                Kind = kind,
                Analysis = analysis,
                TestMonth = tested,
            }
            : null;
    }
}
