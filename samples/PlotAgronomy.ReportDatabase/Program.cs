using System.Diagnostics;
using System.Globalization;
using PlotAgronomy;
using PlotAgronomy.Columns;
using PlotAgronomy.ReportDatabase;

// Soil tests in a Parquet file, limed by a query: a column of the library is a function of the database. Beside it the same
// column called on the same numbers, to see what the way through the database costs.
int reports = args is [var count] ? int.Parse(count, NumberStyles.None, CultureInfo.InvariantCulture) : 2_000_000;
var column = LimeColumn.ForMethod(LimeMethod.Oregon, targetPh: 6.4);
string file = Path.Combine(Path.GetTempPath(), $"soil-tests-{Environment.ProcessId}.parquet");
try
{
    using var database = new SoilTestDatabase();
    database.Run(
        $"""
        COPY (SELECT i % 40 AS district, round(4.8 + 2.2 * random(), 1) AS water_ph, round(5.2 + 1.6 * random(), 1) AS buffer_ph
              FROM range({reports}) t(i)) TO '{file}' (FORMAT parquet)
        """
    );
    database.Add("lime", column);
    string limed = $"(SELECT district, lime(water_ph, buffer_ph) AS lime FROM '{file}')";

    database.Rows($"SELECT sum(lime) FROM {limed}");
    var clock = Stopwatch.StartNew();
    object[] total = database.Rows($"SELECT count(lime), sum(lime) FROM {limed}")[0];
    double inDatabase = clock.Elapsed.TotalSeconds;

    double[] waterPh = database.Numbers($"SELECT water_ph FROM '{file}'"),
        bufferPh = database.Numbers($"SELECT buffer_ph FROM '{file}'"),
        rates = new double[reports];
    var status = new RowStatus[reports];
    ulong[] flags = new ulong[reports];
    column.Rates(waterPh, bufferPh, rates, status, flags);
    clock.Restart();
    column.Rates(waterPh, bufferPh, rates, status, flags);
    double alone = clock.Elapsed.TotalSeconds;

    Say($"{reports:N0} reports: {column}, {column.Method.Basis}");
    Say($"in the database: {total[0]:N0} answered, {reports / inDatabase / 1e6:N0} million rows a second");
    Say($"the column alone: {rates.LongCount(double.IsFinite):N0} answered, {reports / alone / 1e6:N0} million rows a second");
    string byDistrict = $"SELECT district, count(lime), avg(lime) FROM {limed} GROUP BY district ORDER BY district LIMIT 3";
    foreach (object[] row in database.Rows(byDistrict))
    {
        Say($"district {row[0]}: {row[1]:N0} answered, on average {row[2]:N0} lb/ac");
    }

    double sum = rates.Where(double.IsFinite).Sum();
    bool isEqual = total[0] is long answered && answered == rates.LongCount(double.IsFinite)
        && total[1] is double inAll && Math.Abs(inAll - sum) <= 1e-9 * sum;
    Console.WriteLine(isEqual ? "both say the same" : "they differ");
    return isEqual ? 0 : 1;
}
finally
{
    File.Delete(file);
}

static void Say(FormattableString line) => Console.WriteLine(line.ToString(CultureInfo.InvariantCulture));
