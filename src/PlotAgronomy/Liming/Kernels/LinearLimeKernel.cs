using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>A published equation; above the last printed row the rate may run out in a straight line, where its table ends in a
/// step.</summary>
internal readonly struct LinearLimeKernel : ILimeKernel
{
    public static bool IsTotal => true;

    internal required double Constant { get; init; }

    internal required double PerReading { get; init; }

    internal required double PerReadingSquared { get; init; }

    internal required double PerWaterPh { get; init; }

    internal required double PoundsPerUnit { get; init; }

    /// <summary>What the equation takes for one unit of the reading: 10 for a lime test index.</summary>
    internal required double Scale { get; init; }

    /// <summary>Where the rate begins to run out; infinite where it does not.</summary>
    internal required double FadesFrom { get; init; }

    internal required double Highest { get; init; }

    internal bool Fades(double reading) => Tolerance.IsAbove(reading, FadesFrom) && !Tolerance.IsAbove(reading, Highest);

    internal double ByEquation(double reading, double waterPh) =>
        LimeMath.Linear(
            Constant,
            PerReading,
            PerReadingSquared,
            PerWaterPh,
            reading * Scale,
            double.IsNaN(waterPh) ? 0 : waterPh
        ) * PoundsPerUnit;

    /// <summary>The rate at the row where it begins to run out.</summary>
    internal double LastPrinted(double waterPh) => Math.Max(0, ByEquation(FadesFrom, waterPh));

    public double PoundsPerAcre(double reading, double waterPh, out LimeRemarks remarks)
    {
        remarks = LimeRemarks.None;
        return Fades(reading)
            ? Interpolation.Line(FadesFrom, LastPrinted(waterPh), Highest, 0, reading)
            : ByEquation(reading, waterPh);
    }
}
