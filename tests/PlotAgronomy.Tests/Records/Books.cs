using System.Text;
using PlotAgronomy.Liming;
using PlotAgronomy.Records;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;
using UnitsNet;

namespace PlotAgronomy.Tests.Records;

/// <summary>Books for tests: one entry of every sort, all fields filled, and entries drawn from seeded numbers.</summary>
internal static class Books
{
    internal const string North = "north";

    internal static readonly LimingMaterial Lime = LimingMaterial.FromAnalysis(
        "pelleted lime", LimingForm.GroundLimestone, 91.3, SieveAnalysis.FromPercent((20, 100), (60, 92.5), (100, 80)), Fraction.FromPercent(2), Fraction.FromPercent(1.1));

    internal static DateOnly Day(int year, int month, int day) => new(year, month, day);

    internal static CropKind Kind(string name) => KindCatalog.Standard.Find(name);

    internal static SeedLot Lot(string kind, string label = "a") => new()
    {
        Label = label,
        Kind = Kind(kind),
        Analysis = SeedAnalysis.FromFractions(Fraction.FromPercent(98.2), Fraction.FromPercent(84), Fraction.FromPercent(3), seedsTested: 400),
    };

    internal static SoilReport Report(double ph, double phosphorus, string laboratory = "county laboratory", Extractant extractant = Extractant.Mehlich3) => new()
    {
        Laboratory = laboratory,
        WaterPh = WaterPh.FromValue(ph),
        Readings = [SoilReading.FromPrinted(SoilAnalyte.Phosphorus, phosphorus, SoilTestUnit.PartsPerMillion, extractant)],
    };

    internal static BookEntry[] OneOfEachSort() =>
    [
        new SoilReportEntry
        {
            On = Day(2024, 3, 1),
            Plot = North,
            Note = "says \"low\", \u00fcber 5 %;\nsecond line",
            Pictures = ["report 1.jpg", "b.png"],
            Report = new SoilReport
            {
                Laboratory = "county laboratory",
                Program = "garden",
                SampledOn = Day(2024, 3, 1),
                WaterPh = WaterPh.FromValue(5.4),
                SaltPh = SaltPh.FromValue(4.9),
                BufferPhs = [BufferPh.FromValue(6.35, SoilBuffer.Mehlich), BufferPh.FromValue(7.61, SoilBuffer.AdamsEvans)],
                ExchangeableAcidity = CationCharge.FromMilliequivalentsPer100Grams(2.1),
                PrintedExchangeCapacity = CationCharge.FromMilliequivalentsPer100Grams(8.7),
                PrintedBaseSaturation = Fraction.FromPercent(71),
                OrganicMatter = Fraction.FromPercent(2.3),
                WeightPerVolume = Density.FromGramsPerCubicCentimeter(1.13),
                SampledDepth = Length.FromInches(6),
                Texture = SoilTexture.SandyLoam,
                Readings =
                [
                    SoilReading.FromPrinted(SoilAnalyte.Phosphorus, 14.5, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3),
                    SoilReading.FromPrinted(SoilAnalyte.Potassium, 88, SoilTestUnit.PoundsPerAcre, Extractant.Mehlich1, PrintedForm.Oxide),
                    SoilReading.FromPrinted(SoilAnalyte.Boron, 0.2, SoilTestUnit.PartsPerMillion, Extractant.HotWater) with { IsUpperLimit = true },
                ],
                SubsoilPotassium = SoilReading.FromPrinted(SoilAnalyte.Potassium, 40, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3),
            },
        },
        new NeedEntry
        {
            On = Day(2024, 3, 10),
            Plot = North,
            Lime = LimeRate.FromBasis(ApplicationRate.FromShortTonsPerAcre(1.5), 6.4, Length.FromInches(6), LimeBasis.GroundLimestone, Institution.NorthCarolina),
            Nitrogen = ApplicationRate.FromPoundsPerAcre(40),
            Phosphate = ApplicationRate.FromPoundsPerAcre(60.1),
            Potash = ApplicationRate.Zero,
        },
        new LimeEntry { On = Day(2024, 4, 2), Plot = North, Material = Lime, IsWorkedIn = true, Loads = [SpreadLoad.FromBags(15.5, Mass.FromPounds(40), Area.FromAcres(0.4)), SpreadLoad.FromWeight(Mass.FromPounds(120.2))] },
        new FertilizerEntry { On = Day(2024, 8, 30), Plot = North, Product = FertilizerProduct.Create("triple", FertilizerAnalysis.FromGrade("13.05-13-13-4.5S")), Loads = [SpreadLoad.FromBags(2, Mass.FromPounds(50))] },
        new SowingEntry
        {
            On = Day(2024, 9, 1),
            Plot = North,
            Blend = "fall, home-made",
            Area = Area.FromAcres(0.42),
            Method = SowingMethod.Broadcast,
            Passes = 2,
            IsPacked = true,
            IsMoist = false,
            Lots =
            [
                new() { Lot = Lot("crimson clover"), Used = BulkSeedMass.FromPounds(6.25) },
                new() { Lot = Lot("winter oats") with { OwnSeedCount = SeedCount.FromSeedsPerPound(14_300), TestMonth = TestMonth.FromYearAndMonth(2024, 5), IsTreated = true }, Used = BulkSeedMass.FromPounds(31) },
            ],
        },
        new RainEntry { On = Day(2024, 9, 8), Plot = North, Amount = Length.FromInches(1.35), Days = 7 },
        new CountEntry { On = Day(2024, 9, 26), Plot = North, Kind = Kind("crimson clover"), Hoop = Area.FromSquareFeet(1), Plants = [12, 0, 31, 9] },
        new WeedEntry { On = Day(2024, 9, 26), Plot = North, Seen = "pigweed", Cover = Fraction.FromPercent(5) },
        new ClippingEntry { On = Day(2024, 11, 1), Plot = North, Clipped = Area.FromSquareFeet(2.4), DryMatter = Fraction.FromPercent(25), Pairs = [new() { Inside = Mass.FromGrams(210), Outside = Mass.FromGrams(96.5) }, new() { Inside = Mass.FromGrams(180), Outside = Mass.FromGrams(190) }] },
        new BrowseEntry { On = Day(2024, 11, 20), Plot = North, Kind = Kind("winter oats"), PlantsByClass = [5, 10, 20, 10, 3, 2] },
        new CameraEntry { On = Day(2024, 12, 1), Plot = North, Days = 14, Images = 310 },
        new NoteEntry { On = Day(2024, 12, 2), Plot = "south", Note = "gate left open", Pictures = ["gate.jpg"] },
    ];

    /// <summary>A book of one of each sort, with a correction and a struck entry.</summary>
    internal static PlotBook Full()
    {
        var book = PlotBook.Empty.With("anna", OneOfEachSort());
        return book.With(
            "ben",
            new RainEntry { On = Day(2024, 9, 8), Plot = North, Amount = Length.FromInches(0.35), Days = 7, Corrects = "anna-6" },
            new StruckEntry { On = Day(2024, 12, 3), Plot = "south", Corrects = "anna-12" });
    }

    internal static byte[] Lines(this PlotBook book)
    {
        using var held = new MemoryStream();
        book.WriteTo(held);
        return held.ToArray();
    }

    internal static string Text(this PlotBook book) => Encoding.UTF8.GetString(book.Lines());

    internal static PlotBook Read(byte[] lines) => PlotBook.Read(new MemoryStream(lines), "book");

    /// <summary>What holds, as text: the same text is the same state.</summary>
    internal static string State(this PlotBook book) => string.Join('\n', book.Current.Select(e => Encoding.UTF8.GetString(EntryLine.Of(e))));
}
