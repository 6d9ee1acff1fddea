namespace PlotAgronomy;

/// <summary>Exact factors between units (source DEF-UNITS), and the mean month of the Julian year.</summary>
internal static class ExactUnits
{
    internal const double SquareFeetPerAcre = 43_560;
    internal const double ThousandSquareFeetPerAcre = 43.56;
    internal const double SquareMetersPerAcre = 4046.8564224;
    internal const double MetersPerFoot = 0.3048;
    internal const double InchesPerFoot = 12;
    internal const double FeetPerMile = 5280;
    internal const double CubicInchesPerCubicFoot = 1728;
    internal const double CubicFeetPerBushel = 2150.42 / CubicInchesPerCubicFoot;
    internal const double KilogramsPerPound = 0.45359237;
    internal const double GramsPerPound = 453.59237;
    internal const double OuncesPerPound = 16;
    internal const double PoundsPerShortTon = 2000;
    internal const double DaysPerYear = 365.25;
    internal const double DaysPerMonth = DaysPerYear / 12;
}
