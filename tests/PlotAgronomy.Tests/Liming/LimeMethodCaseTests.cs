using System.Globalization;
using System.Text;
using PlotAgronomy.Liming;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Liming;

/// <summary>What every lime method says in every case that it tells apart: a reading inside what it covers, at both ends and beyond,
/// without a reading, at its target and above. The words stand in <c>lime-cases.approved.txt</c>, read by a person against the
/// publications; the figures are tested by the worked examples.</summary>
public class LimeMethodCaseTests
{
    [Fact]
    public void One_case_a_class()
    {
        var said = new StringBuilder();
        foreach (var method in LimeMethod.Everything.OrderBy(m => m.Id, StringComparer.Ordinal))
        {
            string sources = string.Join(' ', method.Origin.Sources.Select(s => s.Id));
            said.Append(CultureInfo.InvariantCulture, $"{method.Id}: {method} ({method.Status}) [{sources}]\n");
            said.Append(CultureInfo.InvariantCulture, $"  reads {method.Reads}; counts in {method.Basis}\n");
            foreach (var (name, soil, target) in Cases(method))
            {
                foreach (string line in Told(method.NeedFor(soil, target)))
                {
                    said.Append(CultureInfo.InvariantCulture, $"  {name}: {line}\n");
                }
            }
        }

        ApprovedText.AssertCurrent(Repository.PathOf("tests/PlotAgronomy.Tests/Liming/lime-cases.approved.txt"), said.ToString());
    }

    private static IEnumerable<(string Name, PlotSoil Soil, double Target)> Cases(LimeMethod method)
    {
        double target = method.TargetPhs is [.., var highest] ? highest : 6.5;
        double low = method.LowestReading;
        double high = Math.Min(method.HighestReading, low + (method.Buffers.IsEmpty ? 400 : 40));
        double sour = Math.Min(5.2, target - 0.5);
        foreach (double ph in method.Formula.ReadsWaterPh ? new[] { 4.5, 5.0, 5.5, 6.0 } : [])
        {
            yield return ($"water pH {Amounts.Print(ph, 2)}", LimeSamples.Soil(method, ph, double.NaN), target);
        }

        double least = LimeSamples.LeastReading(method);
        foreach (double reading in method.Formula.ReadsWaterPh ? [] : new[] { low - 0.01, Math.Max(low, least), (low + high) / 2, high, high + 0.01 }.Where(r => r >= least))
        {
            yield return ($"reading {Amounts.Print(reading, 3)}", LimeSamples.Soil(method, sour, reading), target);
        }

        double middle = method.Formula.ReadsWaterPh ? double.NaN : (low + high) / 2;
        foreach (double ph in new[] { target - 0.01, target, target + 0.01 })
        {
            yield return ($"water pH {Amounts.Print(ph, 2)}", LimeSamples.Soil(method, ph, middle), target);
        }

        yield return ("nothing read", PlotSoil.For(SoilReport.None), target);
        if (!method.TargetPhs.IsEmpty)
        {
            yield return ("a target it does not print", LimeSamples.Soil(method, sour, middle), target - 0.13);
        }
    }

    private static IEnumerable<string> Told(LimeNeed need)
    {
        yield return need.ToString();
        foreach (var line in need.ShowWork())
        {
            yield return line.ToString();
        }

        string codes = string.Join(' ', need.Findings.Select(f => f.Code).Distinct());
        string own = string.Join(' ', need.Sources.Except(need.Method.Origin.Sources).Select(s => s.Id));
        if (codes.Length + own.Length > 0)
        {
            yield return $"{codes} [{own}]";
        }
    }
}
