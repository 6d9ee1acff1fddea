using System.Globalization;
using System.Runtime;

/// <summary>What the runtime looks for, under this name and without a namespace, in an assembly that a new process is to load
/// first. It tells the error stream how many methods were compiled while the process ran.</summary>
internal static class StartupHook
{
    internal static void Initialize() =>
        AppDomain.CurrentDomain.ProcessExit += (_, _) =>
            Console.Error.WriteLine(JitInfo.GetCompiledMethodCount().ToString(CultureInfo.InvariantCulture));
}
