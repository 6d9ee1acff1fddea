#:project ../../src/PlotAgronomy/PlotAgronomy.csproj

// Three plots of one property, sown alike from one shelf: what do they buy together, who takes how much, what does sharing save?
using PlotAgronomy;
using PlotAgronomy.Planning;
using UnitsNet;

var dollars = Currency.FromCode("USD");
var lime = LimingMaterial.FromLabel("ground limestone", LimingForm.GroundLimestone, LimeFigure.FromPoundsEqualToOneTon(2080));
var property = PropertyPlan.Of(
    Plan("Fern Bottom", acres: 0.58, ph: 5.6, buffer: 6.35, phosphorus: 34, potassium: 41),
    Plan("Ridge Strip", acres: 0.27, ph: 5.7, buffer: 6.3, phosphorus: 22, potassium: 55),
    Plan("Gate Corner", acres: 0.17, ph: 6.1, buffer: 6.5, phosphorus: 48, potassium: 30));
foreach (var bought in property.Purchases)
{
    Console.WriteLine($"{bought.Name}: {dollars.Print(bought.Cost)}; bags together {bought.Together}, apart {bought.Apart}");
    foreach (var (plot, mass) in bought.Needs)
    {
        Console.WriteLine($"  {plot.Name}: {Amounts.Print(mass, "lb", 1)}");
    }
}

Console.WriteLine($"{property}; sharing saves {dollars.Print(property.Saved)}");

PlotPlan Plan(string name, double acres, double ph, double buffer, double phosphorus, double potassium) => new()
{
    Plot = new Plot { Name = name, Measured = PlotArea.Stated(Area.FromAcres(acres)) },
    Report = new SoilReport
    {
        Laboratory = "state laboratory",
        SoilClass = SoilClass.Mineral,
        WaterPh = WaterPh.FromValue(ph),
        BufferPhs = [BufferPh.FromValue(buffer, SoilBuffer.Mehlich)],
        Readings = [Index(SoilAnalyte.Phosphorus, phosphorus), Index(SoilAnalyte.Potassium, potassium)],
    },
    PlantingDate = new DateOnly(2026, 9, 12),
    Method = PlantingMethod.TilledAndPacked,
    Kinds = [Half("spring oats", pure: 98, germination: 88, bag: 50, price: 19), Half("crimson clover", 98.5, 78, 25, 58)],
    LimeMethod = LimeMethod.Find("north-carolina-mehlich"),
    LimeOffers = [Offer.InBags(lime, Mass.FromPounds(50), pricePerBag: 4.90m)],
    NutrientSystem = RecommendationSystem.NorthCarolina,
    FertilizerOffers = [Grade("10-20-20", price: 24), Grade("0-46-0", price: 36), Grade("0-0-60", price: 27)],
    Currency = dollars,
};

static SoilReading Index(SoilAnalyte analyte, double value) =>
    SoilReading.FromPrinted(analyte, value, SoilTestUnit.NorthCarolinaIndex, Extractant.Mehlich3);

static Offer<FertilizerProduct> Grade(string grade, decimal price) =>
    Offer.InBags(FertilizerProduct.Create(grade, FertilizerAnalysis.FromGrade(grade)), Mass.FromPounds(50), price);

static PlannedKind Half(string name, double pure, double germination, double bag, decimal price)
{
    var kind = KindCatalog.Standard.Find(name);
    var tag = SeedAnalysis.FromFractions(Fraction.FromPercent(pure), Fraction.FromPercent(germination));
    var lot = new SeedLot { Kind = kind, Label = "this year", Analysis = tag };
    return new() { Share = KindShare.FromShare(kind, 0.5), Offer = Offer.InBags(lot, Mass.FromPounds(bag), price) };
}
