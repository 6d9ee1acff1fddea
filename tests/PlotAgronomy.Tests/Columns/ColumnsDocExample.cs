using PlotAgronomy.Columns;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Columns;

public class ColumnsDocExample
{
    [Fact]
    public void The_example_of_the_page_runs() =>
        DocExample.AssertCurrent("docs/columns.md", "tests/PlotAgronomy.Tests/Columns/ColumnsDocExample.cs", Run);

    private static void Run(TextWriter output)
    {
        // begin example
        // Five soils as a laboratory's list holds them; a blank is NaN.
        double[] waterPh = [5.2, 6.5, 5.4, 6.9, 4.4];
        double[] bufferPh = [6.43, 6.9, double.NaN, 5.6, 4.6];
        double[] rates = new double[5];
        RowStatus[] status = new RowStatus[5];
        ulong[] flags = new ulong[5];

        LimeColumn column = LimeColumn.ForMethod(LimeMethod.Oregon, targetPh: 6.4);
        column.Rates(waterPh, bufferPh, rates, status, flags);
        for (int row = 0; row < rates.Length; row++)
        {
            string rate = double.IsNaN(rates[row]) ? "no number" : $"{Amounts.Print(rates[row] / 2000, 3)} ton/ac";
            output.WriteLine($"{status[row]}: {rate}; {string.Join(", ", column.RowFindings.In(flags[row]).Select(f => f.Code))}");
        }

        // As Oregon prints them, to a tenth of a ton.
        column.Published(rates, rates);
        output.WriteLine($"{Amounts.Print(rates[0] / 2000, 3)} ton/ac of {column.Method.Basis.Name}");
        output.WriteLine($"{status.Count(s => s == RowStatus.Answered)} of {status.Length} rows have a rate");
        // end example
    }
}
