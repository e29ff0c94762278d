using Passagework.Studio.Hosting;

return await StudioCommand.Run(args);
