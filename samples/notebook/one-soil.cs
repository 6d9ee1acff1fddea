#:project ../../src/PlotAgronomy/PlotAgronomy.csproj
#:package ScottPlot@5.1.59
#:property InvariantGlobalization=true

// The cells of one-soil.ipynb as a program, for where there is no kernel for C#. A folder that is named takes the charts.
using PlotAgronomy;
using PlotAgronomy.Columns;
using PlotAgronomy.Liming;
using PlotAgronomy.Planning;
using PlotAgronomy.Seeds;
using UnitsNet;

// One sour soil, as the laboratory prints it, and the pH that the clover wants.
const double TargetPh = 6.0;
var report = new SoilReport
{
    Laboratory = "state laboratory",
    SoilClass = SoilClass.Mineral,
    WaterPh = WaterPh.FromValue(5.4),
    BufferPhs = [BufferPh.FromValue(6.3, SoilBuffer.Sikora)],
};
Console.WriteLine($"{report.WaterPh}, {report.BufferPhs[0]}, wanted pH {Amounts.Print(TargetPh, 1)}");

// What would each institution lime? Only methods that were checked in print and have a number for this soil.
var needs = LimeMethod.All
    .Where(method => method.Status == DataStatus.Read)
    .Select(method => method.NeedFor(report, TargetPh))
    .Where(need => need.Rate is not null)
    .OrderBy(need => need.Rate!.OfBasis)
    .ToList();
foreach (var need in needs)
{
    string rate = $"{Amounts.Print(need.Rate!.OfBasis.ShortTonsPerAcre, 2)} ton/ac";
    Console.WriteLine($"{need.Method.Name,-57}{rate,12}, {Amounts.Print(need.Rate.Depth, "in", 1)} deep");
}

// The same question for every reading of the buffer: a column answers a thousand soils as one.
double[] readings = [.. Enumerable.Range(0, 200).Select(step => 5.5 + (step * 0.0075))];
double[] waterPhs = [.. readings.Select(_ => report.WaterPh!.Value)];
var lines = new ScottPlot.Plot();
foreach (var method in needs.Select(need => need.Method))
{
    double[] rates = new double[readings.Length];
    var column = LimeColumn.ForMethod(method, TargetPh, SoilClass.Mineral, buffer: SoilBuffer.Sikora);
    column.Rates(waterPhs, readings, rates, new RowStatus[rates.Length], new ulong[rates.Length]);
    var answered = readings.Zip(rates).Where(row => !double.IsNaN(row.Second));
    var line = lines.Add.ScatterLine(answered.Select(row => new ScottPlot.Coordinates(row.First, row.Second / 2000)).ToArray());
    line.LegendText = method.Name;
}

lines.Title($"Lime to pH {Amounts.Print(TargetPh, 1)}, each in its institution's own lime");
lines.XLabel("buffer pH (Sikora)");
lines.YLabel("ton/ac");
lines.ShowLegend(ScottPlot.Alignment.UpperRight);
Show(lines, "lime");

// Two bags of crimson clover. Which is cheaper once only living seed counts?
var clover = KindCatalog.Standard.Find("crimson clover");
var stand = PureLiveSeedRate.BroadcastPoundsPerAcre(20);
SeedLot Lot(string label, double pure, double germination) => new()
{
    Kind = clover,
    Label = label,
    Analysis = SeedAnalysis.FromFractions(Fraction.FromPercent(pure), Fraction.FromPercent(germination)),
};
Offer<SeedLot>[] shelf =
[
    Offer.InBags(Lot("cheap bag", pure: 92, germination: 60), Mass.FromPounds(50), pricePerBag: 98),
    Offer.InBags(Lot("dear bag", pure: 99, germination: 90), Mass.FromPounds(50), pricePerBag: 142),
];
var dollars = Currency.FromCode("USD");
foreach (var lot in SeedLotComparison.Rank(shelf, stand).Ranked)
{
    string price = $"{dollars.Print(lot.Value.PricePerPound)} a pound";
    string living = $"{dollars.Print(lot.Value.PricePerLivingPound)} a living pound";
    string bulk = $"{Amounts.Print(lot.Seeding.Bulk.PoundsPerAcre, 1)} lb/ac";
    Console.WriteLine($"{lot.Lot.Label,-10} {price}, {living}; weigh out {bulk}");
}

// The same two bags as a picture: what a pound costs, and what a pound of living seed costs.
var bars = new ScottPlot.Plot();
var ranked = SeedLotComparison.Rank(shelf, stand).Ranked;
bars.Add.Bars([1.0, 2.0], [.. ranked.Select(lot => (double)lot.Value.PricePerPound)]).LegendText = "a pound";
bars.Add.Bars([4.0, 5.0], [.. ranked.Select(lot => (double)lot.Value.PricePerLivingPound)]).LegendText = "a living pound";
bars.Axes.Bottom.SetTicks([1, 2, 4, 5], [.. ranked.Concat(ranked).Select(lot => lot.Lot.Label)]);
bars.Axes.SetLimitsY(0, 4.5);
bars.Title("Price of crimson clover, USD");
bars.ShowLegend(ScottPlot.Alignment.UpperLeft);
Show(bars, "seed");

// The whole plot this fall, and a year after liming when a new test shows pH 6.1: a plan with facts changed is another plan.
var pellets = LimingMaterial.FromLabel("lime pellets", LimingForm.Pelletized, LimeFigure.FromPoundsEqualToOneTon(2080));
var thisFall = new PlotPlan
{
    Plot = new PlotAgronomy.Plot
    {
        Name = "Fern Bottom",
        Measured = PlotArea.FromRectangle(Length.FromFeet(182), Length.FromFeet(140)),
    },
    Report = report with { BufferPhs = [BufferPh.FromValue(6.2, SoilBuffer.Mehlich)] },
    PlantingDate = new DateOnly(2026, 9, 12),
    Method = PlantingMethod.TilledAndPacked,
    Kinds = [new PlannedKind { Share = KindShare.FromShare(clover, 1), Offer = shelf[1] }],
    LimeMethod = LimeMethod.NorthCarolina,
    LimeOffers = [Offer.InBags(pellets, Mass.FromPounds(40), pricePerBag: 6.50m)],
    NutrientSystem = RecommendationSystem.NorthCarolina,
    Spreader = new PlannedSpreader { Name = "shoulder spreader", Swath = Length.FromFeet(14) },
    Currency = dollars,
};
var limed = report with { WaterPh = WaterPh.FromValue(6.1), BufferPhs = [BufferPh.FromValue(6.5, SoilBuffer.Mehlich)] };
var nextFall = thisFall with { Report = limed, PlantingDate = new DateOnly(2027, 9, 11) };
foreach (var plan in new[] { thisFall, nextFall })
{
    var sheet = FieldSheet.Of(plan.Solve());
    Console.WriteLine($"{sheet.Title}: {sheet.FirstSentence}");
    foreach (var figure in sheet.Figures.Where(figure => figure.Code.StartsWith("buy.", StringComparison.Ordinal)))
    {
        Console.WriteLine($"  {figure.Label}: {figure.Value}");
    }
}

// In the notebook this is the first cell: a chart is shown below its cell.
void Show(ScottPlot.Plot chart, string name)
{
    if (args is [var folder]) chart.SaveSvg(Path.Combine(folder, $"{name}.svg"), 720, 360);
}
