namespace PlotAgronomy.Soil;

/// <summary>Words of the trade for what a report holds; a plan file uses the same ones.</summary>
internal static class SoilWords
{
    internal static EnumWords<SoilAnalyte> Analytes { get; } = EnumWords<SoilAnalyte>.FromNames();

    internal static EnumWords<SoilTexture> Textures { get; } = EnumWords<SoilTexture>.FromNames();

    internal static EnumWords<SoilClass> Classes { get; } =
        new((SoilClass.Mineral, "mineral"), (SoilClass.MineralOrganic, "mineral-organic"), (SoilClass.Organic, "organic"));

    internal static EnumWords<CationChargeBasis> ChargeBases { get; } =
        new((CationChargeBasis.Per100Grams, "meq/100 g"), (CationChargeBasis.Per100CubicCentimeters, "meq/100 cm3"));

    internal static EnumWords<SoilSupply> Supplies { get; } = EnumWords<SoilSupply>.FromNames();

    internal static EnumWords<SampleMoisture> SampleStates { get; } =
        new((SampleMoisture.FieldMoist, "field-moist"), (SampleMoisture.Dried, "dried"));

    internal static EnumWords<SoilTestUnit> Units { get; } =
        new(
            (SoilTestUnit.PartsPerMillion, "ppm"),
            (SoilTestUnit.MilligramsPerCubicDecimeter, "mg/dm3"),
            (SoilTestUnit.PoundsPerAcre, "lb/ac"),
            (SoilTestUnit.KilogramsPerHectare, "kg/ha"),
            (SoilTestUnit.MilliequivalentsPer100Grams, "meq/100 g"),
            (SoilTestUnit.MilliequivalentsPer100CubicCentimeters, "meq/100 cm3"),
            (SoilTestUnit.PercentSaturation, "% saturation"),
            (SoilTestUnit.NorthCarolinaIndex, "North Carolina index"),
            (SoilTestUnit.DelawareIndex, "Delaware index"),
            (SoilTestUnit.OklahomaIndex, "Oklahoma index"),
            (SoilTestUnit.DecisiemensPerMeter, "dS/m")
        );

    internal static EnumWords<Extractant> Extractants { get; } =
        new(
            (Extractant.Mehlich1, "Mehlich-1"),
            (Extractant.Mehlich3, "Mehlich-3"),
            (Extractant.Mehlich3Colorimetric, "Mehlich-3 colorimetric"),
            (Extractant.Mehlich3Icp, "Mehlich-3 ICP"),
            (Extractant.BrayP1, "Bray P-1"),
            (Extractant.Olsen, "Olsen"),
            (Extractant.AmmoniumAcetate, "ammonium acetate"),
            (Extractant.Morgan, "Morgan"),
            (Extractant.ModifiedMorgan, "modified Morgan"),
            (Extractant.Lancaster, "Lancaster"),
            (Extractant.HydrochloricAcid, "0.1 N HCl"),
            (Extractant.Dtpa, "DTPA"),
            (Extractant.HotWater, "hot water"),
            (Extractant.PotassiumChloride, "1 M KCl"),
            (Extractant.SaturatedPaste, "saturated paste"),
            (Extractant.NotStated, "not stated")
        );

    internal static EnumWords<SoilBuffer> Buffers { get; } =
        new(
            (SoilBuffer.Smp, "SMP"),
            (SoilBuffer.Sikora, "Sikora"),
            (SoilBuffer.Sikora2, "Sikora-2"),
            (SoilBuffer.Mehlich, "Mehlich"),
            (SoilBuffer.ModifiedMehlich, "modified Mehlich"),
            (SoilBuffer.AdamsEvans, "Adams-Evans"),
            (SoilBuffer.ModifiedAdamsEvans, "modified Adams-Evans"),
            (SoilBuffer.MooreSikora, "Moore-Sikora"),
            (SoilBuffer.Woodruff, "Woodruff"),
            (SoilBuffer.NewWoodruff, "new Woodruff")
        );

    internal static string For(SoilTestUnit unit) => Units[unit];

    /// <summary>An extractant within a sentence, where "not stated" alone would not read.</summary>
    internal static string For(Extractant extractant) =>
        extractant == Extractant.NotStated ? "an extractant the report does not name" : Extractants[extractant];

    internal static string For(SoilBuffer buffer) => Buffers[buffer];

    internal static string For(SoilAnalyte analyte) => Analytes[analyte];

    internal static string For(PlantNutrient nutrient) => PlantNutrients.InSentence(nutrient);

    internal static string For(SoilClass soilClass) => Classes[soilClass];

    internal static string For(CationChargeBasis basis) => ChargeBases[basis];

    /// <summary>An analyte at the start of a sentence.</summary>
    internal static string Opening(SoilAnalyte analyte)
    {
        string word = Analytes[analyte];
        return $"{char.ToUpperInvariant(word[0])}{word[1..]}";
    }

    /// <summary>A test value with its unit, such as <c>12 ppm</c> or <c>index 45</c>;
    /// null is an index a system computes.</summary>
    internal static string Amount(double value, SoilTestUnit? unit) =>
        unit is null || IsIndex(unit.Value) ? $"index {Amounts.Print(value, 4)}" : $"{Amounts.Print(value, 4)} {For(unit.Value)}";

    /// <summary>A value as a report prints it, with the name of its scale, such as <c>12
    /// ppm</c> or <c>North Carolina index 45</c>.</summary>
    internal static string Printed(double value, SoilTestUnit unit) =>
        IsIndex(unit) ? $"{For(unit)} {Amounts.Print(value, 4)}" : $"{Amounts.Print(value, 4)} {For(unit)}";

    internal static bool IsIndex(SoilTestUnit unit) =>
        unit is SoilTestUnit.NorthCarolinaIndex or SoilTestUnit.DelawareIndex or SoilTestUnit.OklahomaIndex;

    internal static string Or(IEnumerable<Extractant> extractants) => string.Join(" or ", extractants.Select(For));

    internal static string Or(IEnumerable<SoilTestUnit> units) => Units.Or(units);
}
