using System.Collections.Immutable;

namespace PlotAgronomy.Soil;

/// <summary>Walks a reading from its printed unit to another: first to the element on its own basis (weight, volume or
/// area), then to the other basis, then to the unit asked for. Each leg is exact where the definitions allow.</summary>
internal sealed class UnitWalk
{
    private readonly SoilReading reading;
    private readonly ConversionFacts facts;
    private readonly ImmutableArray<ConversionStep>.Builder steps = ImmutableArray.CreateBuilder<ConversionStep>(2);
    private double amount;

    private UnitWalk(SoilReading reading, SampledSoil soil)
    {
        this.reading = reading;
        facts = new ConversionFacts(reading, soil);
        amount = reading.PrintedValue;
    }

    private enum Basis
    {
        Weight,
        Volume,
        Area,
    }

    internal static ReadingConversion Run(SoilReading reading, SoilTestUnit unit, SampledSoil soil, PrintedForm form)
    {
        var walk = new UnitWalk(reading, soil);
        walk.ToElement();
        walk.Open(reading.Unit);
        walk.Cross(BasisOf(reading.Unit), BasisOf(unit));
        walk.Close(unit);
        walk.ToForm(form);
        var converted = SoilReading.FromPrinted(reading.Analyte, walk.amount, unit, reading.Extractant, form);
        return new ReadingConversion(reading, converted, walk.steps.DrainToImmutable(), walk.facts.Remarks);
    }

    private static Basis BasisOf(SoilTestUnit unit) =>
        unit switch
        {
            SoilTestUnit.PoundsPerAcre or SoilTestUnit.KilogramsPerHectare => Basis.Area,
            SoilTestUnit.MilligramsPerCubicDecimeter
            or SoilTestUnit.MilliequivalentsPer100CubicCentimeters
            or SoilTestUnit.NorthCarolinaIndex => Basis.Volume,
            _ => Basis.Weight,
        };

    private void Step(string formulaId, string place, double to, params ImmutableArray<FormulaPlace> values) =>
        Step(formulaId, place, to, null, values);

    private void Step(string formulaId, string place, double to, Origin? factor, ImmutableArray<FormulaPlace> values)
    {
        steps.Add(new ConversionStep(SoilFormulas.All[formulaId], place, amount, to, values, factor));
        amount = to;
    }

    private void ToElement()
    {
        if (reading.Form == PrintedForm.Oxide)
        {
            double factor = Cations.OxideFactorOf(reading.Analyte);
            Step("element-of-oxide", "oxide", SoilUnitMath.ElementFromOxide(amount, factor), Oxide(factor));
        }
    }

    private void ToForm(PrintedForm form)
    {
        if (form == PrintedForm.Oxide)
        {
            double factor = Cations.OxideFactorOf(reading.Analyte);
            Step("oxide-of-element", "element", SoilUnitMath.OxideFromElement(amount, factor), Oxide(factor));
        }
    }

    /// <summary>From the printed unit to ppm, mg per liter of soil or lb/ac.</summary>
    private void Open(SoilTestUnit unit)
    {
        switch (unit)
        {
            case SoilTestUnit.KilogramsPerHectare:
                Step(
                    "pounds-of-kilograms",
                    "kg/ha",
                    ApplicationRate.FromKilogramsPerHectare(amount).PoundsPerAcre,
                    new FormulaPlace("lb/ac in a kg/ha", ApplicationRate.FromKilogramsPerHectare(1).PoundsPerAcre, 4)
                );
                break;
            case SoilTestUnit.MilliequivalentsPer100Grams or SoilTestUnit.MilliequivalentsPer100CubicCentimeters:
                double weight = Cations.EquivalentWeightOf(reading.Analyte)!.Value;
                Step(
                    "concentration-of-charge",
                    "meq",
                    SoilUnitMath.PpmFromMilliequivalents(amount, weight),
                    new FormulaPlace("equivalent weight", weight, 3)
                );
                break;
            case SoilTestUnit.PercentSaturation:
                double capacity = CapacityByWeight();
                Step("charge-of-saturation", "percent", SoilUnitMath.ChargeFromSaturation(amount, capacity), Capacity(capacity));
                Open(SoilTestUnit.MilliequivalentsPer100Grams);
                break;
            case SoilTestUnit.NorthCarolinaIndex or SoilTestUnit.DelawareIndex or SoilTestUnit.OklahomaIndex:
                var scale = facts.Scale(unit);
                Step(
                    "concentration-of-index",
                    "index",
                    SoilUnitMath.ConcentrationFromIndex(amount, scale.PerIndexUnit),
                    scale.Origin,
                    [IndexUnit(scale)]
                );
                break;
        }
    }

    /// <summary>From ppm, mg per liter of soil or lb/ac to the unit asked for.</summary>
    private void Close(SoilTestUnit unit)
    {
        switch (unit)
        {
            case SoilTestUnit.KilogramsPerHectare:
                Step(
                    "kilograms-of-pounds",
                    "lb/ac",
                    ApplicationRate.FromPoundsPerAcre(amount).KilogramsPerHectare,
                    new FormulaPlace("kg/ha in a lb/ac", ApplicationRate.FromPoundsPerAcre(1).KilogramsPerHectare, 4)
                );
                break;
            case SoilTestUnit.MilliequivalentsPer100Grams or SoilTestUnit.MilliequivalentsPer100CubicCentimeters:
                double weight = Cations.EquivalentWeightOf(reading.Analyte)!.Value;
                Step(
                    "charge-of-concentration",
                    "concentration",
                    SoilUnitMath.MilliequivalentsFromPpm(amount, weight),
                    new FormulaPlace("equivalent weight", weight, 3)
                );
                break;
            case SoilTestUnit.PercentSaturation:
                Close(SoilTestUnit.MilliequivalentsPer100Grams);
                double capacity = CapacityByWeight();
                Step("saturation-of-charge", "charge", SoilUnitMath.SaturationFromCharge(amount, capacity), Capacity(capacity));
                break;
            case SoilTestUnit.NorthCarolinaIndex or SoilTestUnit.DelawareIndex or SoilTestUnit.OklahomaIndex:
                var scale = facts.Scale(unit);
                Step(
                    "index-of-concentration",
                    "concentration",
                    SoilUnitMath.IndexFromConcentration(amount, scale.PerIndexUnit),
                    scale.Origin,
                    [IndexUnit(scale)]
                );
                break;
        }
    }

    private void Cross(Basis from, Basis to)
    {
        switch (from, to)
        {
            case (Basis.Weight, Basis.Area):
                var down = facts.Layer();
                Step(
                    down.PoundsFormulaId,
                    "ppm",
                    SoilUnitMath.PoundsPerAcreFromPpm(amount, down.SoilPoundsPerAcre),
                    down.FormulaValues
                );
                break;
            case (Basis.Area, Basis.Weight):
                var up = facts.Layer();
                Step(up.PpmFormulaId, "lb/ac", SoilUnitMath.PpmFromPoundsPerAcre(amount, up.SoilPoundsPerAcre), up.FormulaValues);
                break;
            case (Basis.Volume, Basis.Area):
                double below = facts.Layer().DepthInches;
                Step(
                    "pounds-of-volume",
                    "mg/dm3",
                    SoilUnitMath.PoundsPerAcreFromMgPerLiter(amount, below),
                    SampledLayer.Inch,
                    SampledLayer.DepthOf(below)
                );
                break;
            case (Basis.Area, Basis.Volume):
                double above = facts.Layer().DepthInches;
                Step(
                    "volume-of-pounds",
                    "lb/ac",
                    SoilUnitMath.MgPerLiterFromPoundsPerAcre(amount, above),
                    SampledLayer.Inch,
                    SampledLayer.DepthOf(above)
                );
                break;
            case (Basis.Volume, Basis.Weight):
                double scooped = facts.WeightPerVolume();
                Step("ppm-of-volume", "mg/dm3", SoilUnitMath.PpmFromMgPerLiter(amount, scooped), Density(scooped));
                break;
            case (Basis.Weight, Basis.Volume):
                double packed = facts.WeightPerVolume();
                Step("volume-of-ppm", "ppm", SoilUnitMath.MgPerLiterFromPpm(amount, packed), Density(packed));
                break;
        }
    }

    /// <summary>The exchange capacity by weight; one printed by volume is a step of its own.</summary>
    private double CapacityByWeight()
    {
        double capacity = facts.Capacity();
        if (facts.CapacityByVolume is { } byVolume)
        {
            var formula = SoilFormulas.All["charge-by-weight"];
            steps.Add(
                new ConversionStep(formula, "charge by volume", byVolume, capacity, [Density(facts.WeightPerVolume())], null)
            );
        }

        return capacity;
    }

    private static FormulaPlace Oxide(double factor) => new("oxide of an element", factor, 4);

    private static FormulaPlace Capacity(double capacity) => new("capacity", capacity, 3, "meq/100 g");

    private static FormulaPlace IndexUnit(IndexScale scale) => new("concentration of an index unit", scale.PerIndexUnit, 4);

    private static FormulaPlace Density(double gramsPerCubicCentimeter) => new("g/cm3", gramsPerCubicCentimeter, 3, "g/cm3");
}
