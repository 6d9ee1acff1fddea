using FsCheck;
using FsCheck.Fluent;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Tests.Soil;

/// <summary>Generators of the soil room.</summary>
public static class SoilArbitraries
{
    private static readonly SoilAnalyte[] Analytes = [SoilAnalyte.Phosphorus, SoilAnalyte.Potassium, SoilAnalyte.Calcium, SoilAnalyte.Magnesium, SoilAnalyte.Sodium, SoilAnalyte.Zinc];

    private static readonly SoilTestUnit[] Units = [.. Enum.GetValues<SoilTestUnit>().Where(u => u != SoilTestUnit.DecisiemensPerMeter)];

    public static Arbitrary<SoilTestUnit> TestUnits() => Arb.From(Gen.Elements(Units));

    public static Arbitrary<SoilReading> Readings() => Arb.From(
        from analyte in Gen.Elements(Analytes)
        from unit in Gen.Elements(Units.Where(u => Converts(analyte, u)).ToArray())
        from tenths in Gen.Choose(0, 20_000)
        select SoilReading.FromPrinted(analyte, tenths / 10.0, unit, Extractant.Mehlich3));

    public static Arbitrary<CationDraw> Draws() => Arb.From(
        from potassium in Gen.Choose(1, 600)
        from magnesium in Gen.Choose(1, 600)
        from calcium in Gen.Choose(1, 5000)
        from sodium in Gen.Choose(0, 200)
        from hundredths in Gen.Choose(600, 800)
        select new CationDraw(potassium, magnesium, calcium, sodium, hundredths / 100.0));

    internal static bool Converts(SoilReading reading, SoilTestUnit unit) => Converts(reading.Analyte, unit);

    private static bool Converts(SoilAnalyte analyte, SoilTestUnit unit)
    {
        bool cation = analyte is SoilAnalyte.Potassium or SoilAnalyte.Calcium or SoilAnalyte.Magnesium or SoilAnalyte.Sodium;
        return unit switch
        {
            SoilTestUnit.MilliequivalentsPer100Grams or SoilTestUnit.MilliequivalentsPer100CubicCentimeters or SoilTestUnit.PercentSaturation => cation,
            SoilTestUnit.NorthCarolinaIndex => analyte is SoilAnalyte.Phosphorus or SoilAnalyte.Potassium or SoilAnalyte.Zinc,
            SoilTestUnit.DelawareIndex => cation && analyte != SoilAnalyte.Sodium || analyte == SoilAnalyte.Phosphorus,
            _ => true,
        };
    }
}
