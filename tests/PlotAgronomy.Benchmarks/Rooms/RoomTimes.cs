using System.Globalization;
using System.Reflection;
using BenchmarkDotNet.Attributes;

namespace PlotAgronomy.Benchmarks.Rooms;

/// <summary>The benchmarks of every room by turns in one process, as a table.</summary>
internal static class RoomTimes
{
    /// <summary>Prints a row for each way of each room whose name holds one of the words, or of all.</summary>
    internal static void Print(string[] words)
    {
        var rooms = typeof(RoomTimes).Assembly.GetTypes()
            .Where(type => type.Namespace == typeof(RoomTimes).Namespace && type.Name.EndsWith("Benchmarks", StringComparison.Ordinal))
            .Where(type => words.Length == 0 || words.Any(word => type.Name.Contains(word, StringComparison.OrdinalIgnoreCase)))
            .OrderBy(type => type.Name, StringComparer.Ordinal);
        Console.WriteLine("| room | way | best | to the first, median | bytes |");
        Console.WriteLine("|---|---|---:|---:|---:|");
        foreach (var room in rooms)
        {
            Print(room, room.Name.Replace("Benchmarks", "", StringComparison.Ordinal));
        }
    }

    private static void Print(Type room, string name)
    {
        object subject = Activator.CreateInstance(room)!;
        var methods = room.GetMethods().Where(m => m.GetCustomAttribute<BenchmarkAttribute>() is not null).ToArray();
        var times = Turns.Of([.. methods.Select(method => WayOf(method, subject))]);
        for (int way = 0; way < methods.Length; way++)
        {
            Console.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"| {name} | {methods[way].Name} | {times[way].Best:0.0##} ns | {times[way].ToTheFirst:0.00} | {times[way].Bytes:0} |"
                )
            );
        }
    }

    private static (Action Run, int Calls) WayOf(MethodInfo method, object subject)
    {
        int calls = method.GetCustomAttribute<BenchmarkAttribute>()!.OperationsPerInvoke;
        if (method.ReturnType == typeof(void))
        {
            return (method.CreateDelegate<Action>(subject), calls);
        }

        var call = typeof(RoomTimes).GetMethod(nameof(Call), BindingFlags.NonPublic | BindingFlags.Static)!.MakeGenericMethod(method.ReturnType);
        return ((Action)call.Invoke(null, [method, subject])!, calls);
    }

    private static Action Call<T>(MethodInfo method, object subject)
    {
        var run = method.CreateDelegate<Func<T>>(subject);
        return () => run();
    }
}
