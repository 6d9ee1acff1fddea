#:project ../../src/PlotAgronomy/PlotAgronomy.csproj

// Four lots of crimson clover are for sale. What does a living pound cost, and what does the plot cost in whole bags?
using PlotAgronomy;
using PlotAgronomy.Seeds;
using UnitsNet;

var clover = KindCatalog.Standard.Find("crimson clover");
var plot = Area.FromAcres(0.75);
var stand = PureLiveSeedRate.BroadcastPoundsPerAcre(20);
var dollars = Currency.FromCode("USD");

// What stands on the tags, in percent, and on the price list.
Offer<SeedLot>[] shelf =
[
    Offer.InBags(Lot("farm store", pure: 98.5, germination: 80, hard: 9), Mass.FromPounds(25), pricePerBag: 68),
    Offer.InBags(Lot("coated", pure: 64.8, germination: 85, hard: 5, coating: 34), Mass.FromPounds(50), pricePerBag: 95),
    Offer.InBags(Lot("seed house", pure: 99.2, germination: 90), Mass.FromPounds(50), pricePerBag: 142.50m),
    Offer.ByThePound(Lot("opened bag", pure: 97, germination: 76, hard: 8), pricePerPound: 2.40m),
];

var comparison = SeedLotComparison.Rank(shelf, stand);
Row("lot", "a pound", "a living pound", "for the plot", "paid for it");
foreach (var ranked in comparison.Ranked)
{
    Row(
        ranked.Lot.Label,
        dollars.Print(ranked.Value.PricePerPound),
        dollars.Print(ranked.Value.PricePerLivingPound),
        Amounts.Print(ranked.Seeding.Bulk.Over(plot).ToMass(), "lb", 1),
        dollars.Print(ranked.CostFor(plot))
    );
}

var cheapest = comparison.Ranked.MinBy(ranked => ranked.CostFor(plot))!;
Console.WriteLine($"\nLeast money for {Amounts.Print(plot, "ac", 2)}: '{cheapest.Lot.Label}', for {stand}.");
foreach (var line in cheapest.Seeding.ShowWork())
{
    Console.WriteLine($"  {line}");
}

foreach (var finding in comparison.Findings)
{
    Console.WriteLine(finding);
}

SeedLot Lot(string label, double pure, double germination, double hard = 0, double coating = 0)
{
    var (seed, living) = (Fraction.FromPercent(pure), Fraction.FromPercent(germination));
    var (hardSeed, coat) = (Fraction.FromPercent(hard), Fraction.FromPercent(coating));
    return new() { Kind = clover, Label = label, Analysis = SeedAnalysis.FromFractions(seed, living, hardSeed, coating: coat) };
}

static void Row(string lot, params string[] cells) =>
    Console.WriteLine($"{lot,-12}" + string.Concat(cells.Select(cell => $"{cell,16}")));
