namespace PlotAgronomy.Soil;

/// <summary>Words of the trade for what a report holds.</summary>
internal static class SoilWords
{
    internal static string For(SoilTestUnit unit) =>
        unit switch
        {
            SoilTestUnit.PartsPerMillion => "ppm",
            SoilTestUnit.MilligramsPerCubicDecimeter => "mg/dm3",
            SoilTestUnit.PoundsPerAcre => "lb/ac",
            SoilTestUnit.KilogramsPerHectare => "kg/ha",
            SoilTestUnit.MilliequivalentsPer100Grams => "meq/100 g",
            SoilTestUnit.MilliequivalentsPer100CubicCentimeters => "meq/100 cm3",
            SoilTestUnit.PercentSaturation => "% saturation",
            SoilTestUnit.NorthCarolinaIndex => "North Carolina index",
            SoilTestUnit.DelawareIndex => "Delaware index",
            SoilTestUnit.OklahomaIndex => "Oklahoma index",
            _ => "dS/m",
        };

    internal static string For(Extractant extractant) =>
        extractant switch
        {
            Extractant.Mehlich1 => "Mehlich-1",
            Extractant.Mehlich3 => "Mehlich-3",
            Extractant.Mehlich3Colorimetric => "Mehlich-3 by colour",
            Extractant.Mehlich3Icp => "Mehlich-3 by ICP",
            Extractant.BrayP1 => "Bray P-1",
            Extractant.Olsen => "Olsen",
            Extractant.AmmoniumAcetate => "ammonium acetate",
            Extractant.Morgan => "Morgan",
            Extractant.ModifiedMorgan => "modified Morgan",
            Extractant.Lancaster => "Lancaster",
            Extractant.HydrochloricAcid => "0.1 N HCl",
            Extractant.Dtpa => "DTPA",
            Extractant.HotWater => "hot water",
            Extractant.PotassiumChloride => "1 M KCl",
            Extractant.SaturatedPaste => "saturated paste",
            _ => "an extractant the report does not name",
        };

    internal static string For(SoilBuffer buffer) =>
        buffer switch
        {
            SoilBuffer.Smp => "SMP",
            SoilBuffer.Sikora2 => "Sikora-2",
            SoilBuffer.ModifiedMehlich => "modified Mehlich",
            SoilBuffer.AdamsEvans => "Adams-Evans",
            SoilBuffer.ModifiedAdamsEvans => "modified Adams-Evans",
            SoilBuffer.MooreSikora => "Moore-Sikora",
            SoilBuffer.NewWoodruff => "new Woodruff",
            _ => buffer.ToString(),
        };

    internal static string For(SoilAnalyte analyte) =>
        analyte switch
        {
            SoilAnalyte.NitrateNitrogen => "nitrate nitrogen",
            SoilAnalyte.SolubleSalts => "soluble salts",
            _ => analyte.ToString().ToLowerInvariant(),
        };

    internal static string For(PlantNutrient nutrient) =>
        nutrient switch
        {
            PlantNutrient.Phosphate => "P2O5",
            PlantNutrient.Potash => "K2O",
            PlantNutrient.Nitrogen => "N",
            _ => nutrient.ToString().ToLowerInvariant(),
        };

    internal static string For(SoilClass soilClass) =>
        soilClass switch
        {
            SoilClass.Mineral => "mineral",
            SoilClass.MineralOrganic => "mineral-organic",
            _ => "organic",
        };

    /// <summary>A test value with its unit, such as <c>12 ppm</c> or <c>index 45</c>; null is an index a system computes.</summary>
    internal static string Amount(double value, SoilTestUnit? unit) =>
        unit is null || IsIndex(unit.Value) ? $"index {Amounts.Print(value, 4)}" : $"{Amounts.Print(value, 4)} {For(unit.Value)}";

    /// <summary>A value as a report prints it, with the name of its scale, such as <c>12 ppm</c> or <c>North Carolina index 45</c>.</summary>
    internal static string Printed(double value, SoilTestUnit unit) =>
        IsIndex(unit) ? $"{For(unit)} {Amounts.Print(value, 4)}" : $"{Amounts.Print(value, 4)} {For(unit)}";

    internal static bool IsIndex(SoilTestUnit unit) =>
        unit is SoilTestUnit.NorthCarolinaIndex or SoilTestUnit.DelawareIndex or SoilTestUnit.OklahomaIndex;

    internal static string Or(IEnumerable<Extractant> extractants) => string.Join(" or ", extractants.Select(For));

    internal static string Or(IEnumerable<SoilTestUnit> units) => string.Join(" or ", units.Select(For));
}
