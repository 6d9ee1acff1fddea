using PlotAgronomy.Tests.Packaging;

namespace PlotAgronomy.Tests.SampleConsole.Terminal;

/// <summary>The console as a program in a folder of its own, called by a shell under the name that the pages use.</summary>
internal sealed class BuiltConsole : IDisposable
{
    internal BuiltConsole()
    {
        Folder = Directory.CreateTempSubdirectory("plot-shell-").FullName;
        string program = Path.Combine(Directory.CreateDirectory(Path.Combine(Folder, "bin")).FullName, "plot-agronomy");
        File.WriteAllText(program, $"#!/bin/sh\nexec dotnet '{Path.Combine(AppContext.BaseDirectory, "plot-agronomy.dll")}' \"$@\"\n");
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(program, UnixFileMode.UserRead | UnixFileMode.UserExecute);
        }
    }

    internal string Folder { get; }

    internal void Lay(string name, string text) => File.WriteAllText(Path.Combine(Folder, name), text);

    internal (int ExitCode, string Output) Bash(string commands) =>
        DotnetCommand.RunProgram("bash", Folder, "--norc", "-c", $"PATH=\"$PWD/bin:$PATH\"\n{commands}");

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}
