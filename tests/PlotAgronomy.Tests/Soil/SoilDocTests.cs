using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Soil;

/// <summary>The worked example of docs/soil.md.</summary>
public class SoilDocTests
{
    [Fact]
    public void The_worked_example_of_the_page_is_what_the_code_writes() =>
        DocExample.AssertCurrent("docs/soil.md", "tests/PlotAgronomy.Tests/Soil/SoilDocTests.cs", Example);

    private static void Example(TextWriter output)
    {
        // begin example
        var report = new SoilReport
        {
            Laboratory = "South Carolina",
            WaterPh = WaterPh.FromValue(5.4),
            BufferPhs = [BufferPh.FromValue(7.70, SoilBuffer.AdamsEvans)],
            SampledDepth = Length.FromInches(6.5),
            SampledOn = new DateOnly(2021, 10, 4),
            Readings =
            [
                SoilReading.FromPrinted(SoilAnalyte.Potassium, 221, SoilTestUnit.PoundsPerAcre, Extractant.Mehlich1),
                SoilReading.FromPrinted(SoilAnalyte.Magnesium, 28, SoilTestUnit.PoundsPerAcre, Extractant.Mehlich1),
                SoilReading.FromPrinted(SoilAnalyte.Calcium, 400, SoilTestUnit.PoundsPerAcre, Extractant.Mehlich1),
                SoilReading.FromPrinted(SoilAnalyte.Sodium, 12, SoilTestUnit.PoundsPerAcre, Extractant.Mehlich1),
            ],
        };

        var potassium = report.Find(SoilAnalyte.Potassium)!;
        output.WriteLine(potassium.ConvertTo(SoilTestUnit.PartsPerMillion, SampledSoil.For(report)).Converted);

        var balance = CationBalance.For(report, AcidityTerm.Clemson).WithTermsRounded(2);
        foreach (var line in balance.ShowWork())
        {
            output.WriteLine(line);
        }

        foreach (var finding in report.Check(today: new DateOnly(2026, 3, 1)))
        {
            output.WriteLine(finding);
        }
        // end example
    }
}
